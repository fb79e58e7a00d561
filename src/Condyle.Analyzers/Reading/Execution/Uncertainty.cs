namespace Condyle.Analyzers.Reading;

/// <summary>The state at which a frame became unsure whether it had already gone on to a later position, or returned; and the ways that have.</summary>
internal sealed class Uncertainty(int journalMark, int outerScope, int assumptionMark)
{
    private readonly List<Way> ahead = [];

    public int JournalMark { get; } = journalMark;

    public int OuterScope { get; } = outerScope;

    public int AssumptionMark { get; } = assumptionMark;

    /// <summary>The results of the ways that have returned.</summary>
    public IEnumerable<object?> Results => ahead.Where(way => way.End == End.Returned).Select(way => way.Result);

    /// <summary>The ways that have gone further than the frame.</summary>
    public IReadOnlyList<Way> Rest => [.. ahead];

    public void Add(Way way) => ahead.Add(way);

    /// <summary>A way that waits at a position, which is then no longer ahead; none when there is none.</summary>
    public Way? TakeAt(int position)
    {
        for (var i = 0; i < ahead.Count; i++)
        {
            if (ahead[i].Position == position && ahead[i].End == End.Joined)
            {
                var way = ahead[i];
                ahead.RemoveAt(i);
                return way;
            }
        }

        return null;
    }

    /// <summary>Where the program has gone if not on to a position where it fails: the nearest way ahead, if there is one, and those further on.</summary>
    public Uncertainty? Ahead(int position)
    {
        var rest = new Uncertainty(JournalMark, OuterScope, AssumptionMark);
        rest.ahead.AddRange(ahead.Where(way => way.End == End.Returned || way.Position > position).OrderBy(way => way.End == End.Returned ? int.MaxValue : way.Position));
        return rest.ahead.Count > 0 ? rest : null;
    }

    /// <summary>The nearest way ahead, which is then no longer one.</summary>
    public Way TakeNearest()
    {
        var nearest = ahead[0];
        ahead.RemoveAt(0);
        return nearest;
    }

    public bool HasMore => ahead.Count > 0;
}
