namespace Condyle.Analyzers.Reading;

/// <summary><c>Split</c>, with all its kinds of separators, a greatest count, and options.</summary>
internal static class StringSplits
{
    private const int CharactersComparedInAStep = 64;
    private const int RemovesEmpty = 1;
    private const int Trims = 2;

    public static void Register() => FrameworkTable.Add("System.String", "Split", new FrameworkMethod(Split) { NeedsAll = true });

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
        var separators = SeparatorsOf(call);
        call.Machine.Budget.Spend(text.Length * (1 + ((call[1] as IStretch)?.Length ?? 0)) / CharactersComparedInAStep);
        return new ArrayValue([.. Parts(text, separators, count ?? int.MaxValue, options).Select(TextValue.Plain)]);
    }

    // No separators at all stand for white space; empty ones separate nothing.
    private static Func<string, int, int> SeparatorsOf(Invocation call)
    {
        var given = call[1] switch
        {
            IStretch several => several.Now(),
            null => [],
            var single => [single],
        };
        var separators = new List<string>();
        foreach (var item in given)
        {
            if (item is char character)
                separators.Add(character.ToString());
            else if (item is TextValue text && text.TryKnown(out var known))
                separators.Add(known);
            else if (item is not null)
                throw call.Unknown();
        }

        if (given.Count == 0 && call.Parameter(0)?.Shape != TypeShape.String)
            return (text, at) => char.IsWhiteSpace(text[at]) ? 1 : 0;
        return (text, at) => separators.FirstOrDefault(separator => separator.Length > 0 && string.CompareOrdinal(text, at, separator, 0, separator.Length) == 0)?.Length ?? 0;
    }

    private static IEnumerable<string> Parts(string text, Func<string, int, int> separatorAt, int most, int options)
    {
        if (most == 0)
            return [];
        Budget.Current.Make(text.Length + 1);
        if (most == 1)
            return Kept(Trim(text)) ? [Trim(text)] : [];
        var parts = new List<string>();
        var start = 0;
        for (var at = 0; at < text.Length && parts.Count < most - 1;)
        {
            var length = separatorAt(text, at);
            if (length == 0)
            {
                at++;
                continue;
            }

            Add(text.Substring(start, at - start));
            at += length;
            start = at;
        }

        // What is left over is the last part; empty ones before it are dropped where they don't count.
        var rest = text.Substring(start);
        if ((options & RemovesEmpty) != 0)
        {
            while (rest.Length > 0 && First(rest) is var (length, next) && next >= 0 && !Kept(Trim(rest.Substring(0, next))))
                rest = rest.Substring(next + length);
        }

        Add(rest);
        return parts;

        void Add(string part)
        {
            if (Kept(Trim(part)))
                parts.Add(Trim(part));
        }

        string Trim(string part) => (options & Trims) != 0 ? part.Trim() : part;

        bool Kept(string part) => part.Length > 0 || (options & RemovesEmpty) == 0;

        (int Length, int At) First(string rest)
        {
            for (var at = 0; at < rest.Length; at++)
            {
                if (separatorAt(rest, at) is > 0 and var length)
                    return (length, at);
            }

            return (0, -1);
        }
    }
}
