using System.Collections.Immutable;

namespace Condyle.Analyzers.Reading;

/// <summary>What is known of something unknown: where its number lies, which text it is or isn't.</summary>
internal sealed record Knowledge(Extent Extent, string? Text, ImmutableHashSet<string> IsNot)
{
    public static Knowledge None { get; } = new(Extent.All, null, []);

    public Knowledge In(Extent extent) => this with { Extent = Extent.And(extent) };

    public Knowledge Is(string text) => this with { Text = text, Extent = new(text.Length, text.Length) };

    public Knowledge Not(string text) => this with { IsNot = IsNot.Add(text) };
}

/// <summary>
/// What the arms that are being read take for granted. A value never changes, so what a condition said of it holds up to the end of its arm, and
/// beyond where the other arm doesn't get there; what a path has decided holds to its end.
/// </summary>
internal sealed class Assumptions
{
    private readonly Dictionary<object, Knowledge> known = [];
    private readonly List<(object Subject, Knowledge Before)> trail = [];

    public int Mark => trail.Count;

    public Knowledge Of(object subject) => known.TryGetValue(subject, out var knowledge) ? knowledge : Knowledge.None;

    public bool Has(object subject) => known.ContainsKey(subject);

    /// <summary>Assumes more, until it is forgotten.</summary>
    public void Assume(object subject, Func<Knowledge, Knowledge> more)
    {
        var before = Of(subject);
        trail.Add((subject, before));
        known[subject] = more(before);
    }

    /// <summary>Takes something as given for the rest of the path.</summary>
    public void Settle(object subject, Func<Knowledge, Knowledge> more)
    {
        known[subject] = more(Of(subject));
        for (var i = 0; i < trail.Count; i++)
        {
            if (ReferenceEquals(trail[i].Subject, subject))
                trail[i] = (subject, more(trail[i].Before));
        }
    }

    /// <summary>Forgets what was assumed since a mark.</summary>
    public void ForgetTo(int mark)
    {
        for (var i = trail.Count - 1; i >= mark; i--)
        {
            var (subject, before) = trail[i];
            if (before == Knowledge.None)
                known.Remove(subject);
            else
                known[subject] = before;
        }

        if (mark < trail.Count)
            trail.RemoveRange(mark, trail.Count - mark);
    }
}
