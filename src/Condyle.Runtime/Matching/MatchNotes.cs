using System.Globalization;

namespace Condyle.Runtime.Matching;

/// <summary>Each note once: of a kind, about the control or joint that it names first, as it was where it mattered most or, where that is all the same, first.</summary>
internal sealed class MatchNotes
{
    /// <summary>What is off by so little more is rounding: of a pose that stays, the beginning is told.</summary>
    private const double MoreThan = 1.001;

    private readonly Dictionary<(MatchNoteKind, string), (int Line, double Off)> seen = [];
    private readonly List<(float Time, string Text)> all = [];

    /// <summary>In the order of their times; of one time as they were taken, a cause before its effects.</summary>
    public IReadOnlyList<string> All => [.. all.OrderBy(note => note.Time).Select(note => string.Create(CultureInfo.InvariantCulture, $"{note.Time:0.##} s: {note.Text}"))];

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
                all.Add((time, ""));
            }
            else if (off <= told.Off * MoreThan)
            {
                continue;
            }

            seen[(note.Kind, about)] = (told.Line, off);
            all[told.Line] = (time, note.Text);
        }
    }
}
