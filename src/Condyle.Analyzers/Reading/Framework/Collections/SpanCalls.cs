namespace Condyle.Analyzers.Reading;

/// <summary>Spans, and what is asked of arrays as spans. One over the characters of a string is the string.</summary>
internal static class SpanCalls
{
    private const string Extensions = "System.MemoryExtensions";
    private const int ItemsComparedInAStep = 4;

    public static void Register()
    {
        foreach (var type in new[] { "System.Span", "System.ReadOnlySpan" })
        {
            FrameworkTable.Add(type, ".ctor", call => call.Count == 1 ? MakeSpan.Of(call[0]) : Slice(call, MakeSpan.Of(call[0])));
            FrameworkTable.Add(type, "op_Implicit", call => MakeSpan.Of(call[0]));
            FrameworkTable.Add(type, "get_Empty", _ => new SpanValue([], 0, 0));
            FrameworkTable.Add(type, "get_Length", call => Length(call));
            FrameworkTable.Add(type, "get_IsEmpty", call => Length(call) == 0);
            FrameworkTable.Add(type, "get_Item", call => CellOf(call) is var cell ? ValueCopies.Of(cell.Items[cell.Index]) : null);
            FrameworkTable.Add(type, "Slice", call => Slice(call, call[0]));
            FrameworkTable.Add(type, "ToArray", call => Arrays.Of(Items(call, 0), call.Method.TypeArguments.FirstOrDefault()));
            FrameworkTable.Add(type, "ToString", call => call[0] as TextValue ?? TextOfCharacters(call));
            FrameworkTable.Add(type, "Fill", call => Write(call, _ => call[1]));
            FrameworkTable.Add(type, "Clear", call => Write(call, _ => call.Default()));
            FrameworkTable.Add(type, "CopyTo", call => Copy(call, mustFit: true));
            FrameworkTable.Add(type, "TryCopyTo", call => Copy(call, mustFit: false));
        }

        FrameworkTable.Add(Extensions, "AsSpan", call => call.Count == 1 ? MakeSpan.Of(call[0]) : Slice(call, MakeSpan.Of(call[0])));
        FrameworkTable.Add(Extensions, "CopyTo", call => Copy(call, mustFit: true));
        FrameworkTable.Add("System.String", "TryCopyTo", call => Copy(call, mustFit: false));
        FrameworkTable.Add("System.String", "CopyTo", call => call.Count == 2 ? Copy(call, mustFit: true) : CopyPart(call));
        foreach (var name in new[] { "Trim", "TrimStart", "TrimEnd" })
            FrameworkTable.Add(Extensions, name, call => call[0] is TextValue ? FrameworkTable.Find("System.String", name)!.Call(call) : throw call.Unknown());
        Add("IsWhiteSpace", call => Items(call, 0).TrueForAll(item => item is char character && char.IsWhiteSpace(character)));
        foreach (var name in new[] { "Equals", "CompareTo" })
            Add(name, call => throw call.Unknown());
        Questions();
        Places();
        Changes();
        Segments();
        SpanParts.Register();
    }

    private static void Segments()
    {
        const string type = "System.ArraySegment";
        FrameworkTable.Add(type, "get_Empty", _ => new SpanValue([], 0, 0));
        FrameworkTable.Add(type, "get_Offset", call => call[0] is IStretch own ? own.Start : throw call.Unknown());
        foreach (var name in new[] { ".ctor", "op_Implicit", "Slice", "get_Item", "ToArray", "CopyTo" })
            FrameworkTable.Add(type, name, FrameworkTable.Find("System.Span", name)!);
        FrameworkTable.Add(type, "set_Item", call =>
        {
            var cell = CellOf(call);
            call.Machine.Write(cell.Items, cell.Index, ValueCopies.Of(call[2]));
            return null;
        });
        foreach (var owner in new[] { type, "System.Span" })
        {
            FrameworkTable.Add(owner, "get_Count", call => Length(call));
            FrameworkTable.Add(owner, "Contains", call => FrameworkTable.Find(Extensions, "Contains")!.Run(call));
            FrameworkTable.Add(owner, "IndexOf", call => FrameworkTable.Find(Extensions, "IndexOf")!.Run(call));
        }
    }

    private static void Questions()
    {
        Add("Contains", call => Find(call, Equalities.Of(Making.ComparerOf(call), call.Machine), [call.Key(1)]) >= 0);
        Add("IndexOf", call => Find(call, Rule(call), Wanted(call)));
        Add("LastIndexOf", call => Find(call, Rule(call), Wanted(call), isLast: true));
        Add("SequenceEqual", call => Items(call, 0).Count == Items(call, 1).Count && IsAt(Items(call, 0), 0, Items(call, 1), Rule(call)));
        Add("StartsWith", call => Wanted(call) is var start && IsAt(Items(call, 0), 0, start, Rule(call)));
        Add("EndsWith", call => Wanted(call) is var end && IsAt(Items(call, 0), Items(call, 0).Count - end.Count, end, Rule(call)));
        Add("Count", call => Wanted(call) is var part ? Count(Items(call, 0), part, Rule(call)) : null);
        Add("BinarySearch", call => Sorting.Find(Items(call, 0), call[1], Orders.Of(call[2], call.Machine)));
        Add("CommonPrefixLength", call => Items(call, 0).Zip(Items(call, 1), (a, b) => Rule(call).Equals(a, b)).TakeWhile(same => same).Count());
        Add("SequenceCompareTo", call => Orders.Default(call.Machine) is var order
            ? Items(call, 0).Zip(Items(call, 1), order.Compare).FirstOrDefault(difference => difference != 0) is not 0 and var found ? found : Items(call, 0).Count.CompareTo(Items(call, 1).Count)
            : null);
        Add("Overlaps", call => call[0] is IStretch a && call[1] is IStretch b ? ReferenceEquals(a.Items, b.Items) && a.Start < b.Start + b.Length && b.Start < a.Start + a.Length : throw call.Unknown());
    }

    // Any of several items, or none of them; the several come one by one or as a span.
    private static void Places()
    {
        Any("IndexOfAny", isOneOf: true, isLast: false, at => at);
        Any("LastIndexOfAny", isOneOf: true, isLast: true, at => at);
        Any("IndexOfAnyExcept", isOneOf: false, isLast: false, at => at);
        Any("LastIndexOfAnyExcept", isOneOf: false, isLast: true, at => at);
        Any("ContainsAny", isOneOf: true, isLast: false, at => at >= 0);
        Any("ContainsAnyExcept", isOneOf: false, isLast: false, at => at >= 0);

        void Any(string name, bool isOneOf, bool isLast, Func<int, object?> answer) => Add(name, call =>
        {
            var several = Enumerable.Range(1, call.Count - 1).Where(at => call.Parameter(at)?.PlainName != "IEqualityComparer").SelectMany(at => IsSpan(call, at) ? Items(call, at) : [call.Key(at)]).ToList();
            var items = Items(call, 0);
            call.Machine.Budget.Spend(items.Count * (1 + several.Count) / ItemsComparedInAStep);
            var places = Enumerable.Range(0, items.Count).Where(at => several.Exists(item => Rule(call).Equals(item, items[at])) == isOneOf).ToList();
            return answer(places.Count == 0 ? -1 : isLast ? places[places.Count - 1] : places[0]);
        });
    }

    private static void Changes()
    {
        Add("Reverse", call => Items(call, 0) is var items ? Write(call, at => items[items.Count - 1 - at]) : null);
        Add("Replace", call => call.Count == 3 && Items(call, 0) is var items
            ? Write(call, at => Rule(call).Equals(items[at], call[1]) ? call[2] : items[at])
            : throw call.Unknown());
        Add("Sort", call =>
        {
            var paired = call.Count > 1 && IsSpan(call, 1) ? call[1] as IStretch : null;
            var items = Items(call, 0).Select((item, at) => (Key: item, Value: paired?.Items[paired.Start + at])).ToList();
            Sorting.Sort(items, 0, items.Count, new KeyOrder(Orders.Of(call[paired is null ? 1 : 2], call.Machine)));
            Write(call, at => items[at].Key);
            for (var i = 0; paired is not null && i < items.Count; i++)
                call.Machine.Write(paired.Items, paired.Start + i, items[i].Value);
            return null;
        });
    }

    // What compares texts in a way that is named is done as strings do it.
    private static void Add(string name, Func<Invocation, object?> run) => FrameworkTable.Add(Extensions, name, call =>
        call.Parameter(call.Count - 1)?.PlainName == "StringComparison" && FrameworkTable.Find("System.String", name) is { } ofTexts ? ofTexts.Call(call) : run(call));

    private static IEqualityComparer<object?> Rule(Invocation call) => Equalities.Of(Making.ComparerOf(call), call.Machine);

    private static bool IsSpan(Invocation call, int index) => call.Parameter(index)?.PlainName is "Span" or "ReadOnlySpan";

    /// <summary>The items of a span as they are now.</summary>
    private static List<object?> Items(Invocation call, int index)
    {
        call.Machine.Calls.Observe(call[index]);
        return Sequences.ListOf(call[index] ?? new SpanValue([], 0, 0), call.Machine) ?? throw call.Unknown();
    }

    private static int Length(Invocation call) => PartOf.CountOf(call[0]) ?? throw call.Unknown();

    private static Cell CellOf(Invocation call) => Elements.CellOf(call[0], call[1]) ?? throw call.Unknown();

    private static List<object?> Wanted(Invocation call) => IsSpan(call, 1) ? Items(call, 1) : [call.Key(1)];

    private static int Find(Invocation call, IEqualityComparer<object?> rule, List<object?> part, bool isLast = false)
    {
        var items = Items(call, 0);
        var places = Enumerable.Range(0, Math.Max(0, items.Count - part.Count + 1));
        return (isLast ? places.Reverse() : places).Where(at => IsAt(items, at, part, rule)).DefaultIfEmpty(-1).First();
    }

    private static bool IsAt(List<object?> items, int at, List<object?> part, IEqualityComparer<object?> rule)
    {
        Budget.Current.Spend(1 + (part.Count / ItemsComparedInAStep));
        return at >= 0 && at + part.Count <= items.Count && part.Select((item, i) => rule.Equals(Keys.Known(items[at + i]), Keys.Known(item))).All(same => same);
    }

    private static int Count(List<object?> items, List<object?> part, IEqualityComparer<object?> rule)
    {
        var count = 0;
        for (var at = 0; part.Count > 0 && at <= items.Count - part.Count; at++)
        {
            if (!IsAt(items, at, part, rule))
                continue;
            count++;
            at += part.Count - 1;
        }

        return count;
    }

    private static object Slice(Invocation call, object? span)
    {
        if (call[1] is RangeValue part)
            return PartOf.Take(span, part) ?? throw call.Unknown();
        var start = call[1] is IndexValue index ? index : new IndexValue(call.Whole(1), FromEnd: false);
        var end = call.Count > 2 ? new IndexValue(call.Whole(1) + call.Whole(2), FromEnd: false) : new IndexValue(0, FromEnd: true);
        return PartOf.Take(span, new RangeValue(start, end)) ?? throw call.Unknown();
    }

    // A stretch of a string's characters, to a place in an array.
    private static object? CopyPart(Invocation call)
    {
        var (text, target, count) = (call.Text(0), call[2] as IStretch ?? throw call.Unknown(), call.Whole(4));
        var (from, to) = (Making.Stretch(call.Whole(1), count, text.Length).Start, Making.Stretch(call.Whole(3), count, target.Length).Start);
        call.Machine.Budget.Spend(count);
        for (var i = 0; i < count; i++)
            call.Machine.Write(target.Items, target.Start + to + i, text[from + i]);
        return null;
    }

    private static TextValue TextOfCharacters(Invocation call) =>
        Items(call, 0) is var items && items.TrueForAll(item => item is char) && items.Count > 0 ? TextValue.Plain(string.Concat(items)) : TextValue.Open;

    private static object? Write(Invocation call, Func<int, object?> item)
    {
        if (call[0] is not IStretch span)
            throw call.Unknown();
        call.Machine.Budget.Spend(span.Length);
        for (var i = 0; i < span.Length; i++)
            call.Machine.Write(span.Items, span.Start + i, ValueCopies.Of(item(i)));
        return null;
    }

    private static bool Copy(Invocation call, bool mustFit)
    {
        var items = Items(call, 0);
        if (call[1] is not IStretch target)
            throw call.Unknown();
        if (items.Count > target.Length)
            return mustFit ? throw new ThrownByCode("System.ArgumentException", "The span that is copied to is too short.") : false;
        for (var i = 0; i < items.Count; i++)
            call.Machine.Write(target.Items, target.Start + i, items[i]);
        return true;
    }

    private sealed class KeyOrder(IComparer<object?> order) : IComparer<(object? Key, object? Value)>
    {
        public int Compare((object? Key, object? Value) a, (object? Key, object? Value) b) => order.Compare(a.Key, b.Key);
    }
}
