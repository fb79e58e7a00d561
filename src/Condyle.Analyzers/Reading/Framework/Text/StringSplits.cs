namespace Condyle.Analyzers.Reading;

/// <summary><c>Split</c>, with all its kinds of separators, a greatest count, and options.</summary>
internal static class StringSplits
{
    private const int CharactersComparedInAStep = 64;
    private const int RemovesEmpty = 1;
    private const int Trims = 2;

    public static void Register() => FrameworkTable.Add("System.String", "Split", new FrameworkMethod(Split) { NeedsAll = true });

    /// <summary>The stretches of a text between separators.</summary>
    /// <param name="text">The text.</param>
    /// <param name="separatorAt">How long the separator at a place is; 0: there is none.</param>
    /// <param name="most">How many there may be; the last one is all that is left.</param>
    /// <param name="options">The number of a <c>StringSplitOptions</c>.</param>
    public static IReadOnlyList<(int Start, int End)> Parts(string text, Func<string, int, int> separatorAt, int most, int options)
    {
        Budget.Current.Make(text.Length + 1);
        var parts = new List<(int Start, int End)>();
        var start = 0;
        for (var at = 0; at < text.Length && parts.Count < most - 1;)
        {
            var length = separatorAt(text, at);
            if (length == 0)
            {
                at++;
                continue;
            }

            Add(start, at);
            at += length;
            start = at;
        }

        // What is left over is the last part; empty ones before it are dropped where they don't count.
        if ((options & RemovesEmpty) != 0 && most > 1)
        {
            while (start < text.Length && First() is var (length, next) && next >= 0 && !Kept(Trim(start, next)))
                start = next + length;
        }

        if (most > 0)
            Add(start, text.Length);
        return parts;

        void Add(int from, int to)
        {
            if (Kept(Trim(from, to)))
                parts.Add(Trim(from, to));
        }

        (int Start, int End) Trim(int from, int to)
        {
            while ((options & Trims) != 0 && from < to && char.IsWhiteSpace(text[from]))
                from++;
            while ((options & Trims) != 0 && from < to && char.IsWhiteSpace(text[to - 1]))
                to--;
            return (from, to);
        }

        bool Kept((int Start, int End) part) => part.Start < part.End || (options & RemovesEmpty) == 0;

        (int Length, int At) First()
        {
            for (var at = start; at < text.Length; at++)
            {
                if (separatorAt(text, at) is > 0 and var length)
                    return (length, at);
            }

            return (0, -1);
        }
    }

    /// <summary>Finds separators that are characters or texts; none at all stand for white space, empty ones separate nothing.</summary>
    /// <param name="given">One, or several in an array or a span.</param>
    /// <param name="noneIsSpace">Whether no separator stands for white space.</param>
    public static Func<string, int, int>? SeparatorsOf(object? given, bool noneIsSpace)
    {
        IReadOnlyList<object?> all = given switch
        {
            IStretch several => several.Now(),
            null => [],
            var single => [single],
        };
        var separators = new List<string>();
        foreach (var item in all)
        {
            if (item is char character)
                separators.Add(character.ToString());
            else if (item is TextValue text && text.TryKnown(out var known))
                separators.Add(known);
            else if (item is not null)
                return null;
        }

        Budget.Current.Spend(separators.Count);
        if (all.Count == 0 && noneIsSpace)
            return (text, at) => char.IsWhiteSpace(text[at]) ? 1 : 0;
        return (text, at) => separators.FirstOrDefault(separator => separator.Length > 0 && string.CompareOrdinal(text, at, separator, 0, separator.Length) == 0)?.Length ?? 0;
    }

    private static object Split(Invocation call)
    {
        var text = call.Text(0);
        int? count = null;
        var options = 0;
        for (var i = 2; i < call.Count; i++)
        {
            if (call[i] is int most)
                count = most;
            else if (call[i] is EnumValue { Number: int chosen })
                options = chosen;
        }

        if (count < 0)
            throw new ThrownByCode("System.ArgumentOutOfRangeException", "A text can't be split into a negative number of parts.");
        var separators = SeparatorsOf(call[1], noneIsSpace: call.Parameter(0)?.Shape != TypeShape.String) ?? throw call.Unknown();
        call.Machine.Budget.Spend(text.Length * (1 + ((call[1] as IStretch)?.Length ?? 0)) / CharactersComparedInAStep);
        return new ArrayValue([.. Parts(text, separators, count ?? int.MaxValue, options).Select(part => TextValue.Plain(text.Substring(part.Start, part.End - part.Start)))]);
    }
}
