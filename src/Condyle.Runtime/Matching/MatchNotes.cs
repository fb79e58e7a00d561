using System.Globalization;

namespace Condyle.Runtime.Matching;

/// <summary>Each note once: of a kind, about the control or joint that it names first, as it was where it mattered most or, where that is all the same, first.</summary>
internal sealed class MatchNotes
{
    private readonly Dictionary<(MatchNoteKind, string), (int Line, double Off)> seen = [];
    private readonly List<string> all = [];

    public IReadOnlyList<string> All => all;

    /// <param name="notes">What there is to say.</param>
    /// <param name="time">When, in seconds.</param>
    /// <param name="limbOff">How far off the limb is that they are about, weighed.</param>
    public void Take(IEnumerable<MatchNote> notes, float time, double limbOff = 0)
    {
        foreach (var note in notes)
        {
            var off = note.Off > 0 ? note.Off : limbOff;
            var about = note.Text.Split('\'') is [_, var name, ..] ? name : note.Text;
            if (!seen.TryGetValue((note.Kind, about), out var told))
            {
                told.Line = all.Count;
                all.Add("");
            }
            else if (off <= told.Off)
            {
                continue;
            }

            seen[(note.Kind, about)] = (told.Line, off);
            all[told.Line] = string.Create(CultureInfo.InvariantCulture, $"{time:0.##} s: {note.Text}");
        }
    }
}
