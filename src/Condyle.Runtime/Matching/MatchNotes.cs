using System.Globalization;

namespace Condyle.Runtime.Matching;

/// <summary>Each note once: of a kind, about the control or joint that it names first, with the time where it was first seen.</summary>
internal sealed class MatchNotes
{
    private readonly HashSet<(MatchNoteKind, string)> seen = [];
    private readonly List<string> all = [];

    public IReadOnlyList<string> All => all;

    public void Take(IEnumerable<MatchNote> notes, float time)
    {
        foreach (var note in notes)
        {
            var about = note.Text.Split('\'') is [_, var name, ..] ? name : note.Text;
            if (seen.Add((note.Kind, about)))
                all.Add(string.Create(CultureInfo.InvariantCulture, $"{time:0.##} s: {note.Text}"));
        }
    }
}
