namespace Condyle.Naming;

/// <summary>
/// What a pattern waits for: state 0 is its beginning, and each further one is a sign of it that has just been met. All that a name can have met so far is
/// followed at once, so nothing is ever tried again (Glushkov's automaton; from memory).
/// </summary>
internal sealed class PatternStates(IReadOnlyList<Func<char, bool>> signs, IReadOnlyList<HashSet<int>> following, HashSet<int> ends)
{
    public bool[] Begin()
    {
        var at = new bool[signs.Count];
        at[0] = true;
        return at;
    }

    public bool[] Next(bool[] at, char character)
    {
        var next = new bool[at.Length];
        for (var state = 0; state < at.Length; state++)
        {
            if (!at[state])
                continue;
            foreach (var after in following[state])
                next[after] |= signs[after](character);
        }

        return next;
    }

    /// <summary>Any characters, or none.</summary>
    public void GoAnywhere(bool[] at)
    {
        var open = new Stack<int>(Enumerable.Range(0, at.Length).Where(state => at[state]));
        while (open.Count > 0)
        {
            foreach (var after in following[open.Pop()].Where(after => !at[after]))
            {
                at[after] = true;
                open.Push(after);
            }
        }
    }

    public bool IsEnd(bool[] at) => ends.Any(end => at[end]);
}
