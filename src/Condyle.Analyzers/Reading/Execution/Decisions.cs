namespace Condyle.Analyzers.Reading;

/// <summary>
/// The ways through a definition that unknown values open. A path is replayed from its list of decisions; the last one that has
/// another answer left gives the next path.
/// </summary>
internal sealed class Decisions
{
    private readonly List<Decision> taken = [];
    private int next;
    private int paths = 1;

    /// <summary>Where a way was first left out because there were too many, and what there is too much of.</summary>
    public (CodePlace At, string Reason)? LeftOut { get; set; }

    public void Restart() => next = 0;

    /// <summary>Which of several answers this path takes; −1 when no more ways may be opened.</summary>
    public int Take(int choices, int mostPaths = Limits.Paths)
    {
        if (next < taken.Count)
            return taken[next++].Answer;
        if (paths + choices - 1 > mostPaths)
            return -1;

        paths += choices - 1;
        taken.Add(new Decision(choices));
        next++;
        return 0;
    }

    /// <summary>Goes on to the next path.</summary>
    public bool Advance()
    {
        while (taken.Count > 0)
        {
            var last = taken[taken.Count - 1];
            if (++last.Answer < last.Choices)
                return true;
            taken.RemoveAt(taken.Count - 1);
        }

        return false;
    }

    private sealed class Decision(int choices)
    {
        public int Choices { get; } = choices;

        public int Answer { get; set; }
    }
}
