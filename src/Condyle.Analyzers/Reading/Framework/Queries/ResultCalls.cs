namespace Condyle.Analyzers.Reading;

/// <summary>The operators that run a query: single items, questions, collections.</summary>
internal static class ResultCalls
{
    public static void Register()
    {
        foreach (var (name, find) in new (string, Func<Invocation, Source, Found>)[] { ("First", First), ("Last", Last), ("Single", Single), ("ElementAt", ElementAt) })
        {
            QueryCalls.Add(name, call => find(call, QueryCalls.Of(call)) is { IsThere: true } found ? found.Item : throw (name == "ElementAt" ? QueryCalls.Of(call).Refusal() : Missing()));
            QueryCalls.Add(name + "OrDefault", call => find(call, QueryCalls.Of(call)) is { IsThere: true } found ? found.Item : DefaultOf(call));
        }

        QueryCalls.Add("Count", call => Count(call));
        QueryCalls.Add("LongCount", call => (long)Count(call));
        QueryCalls.Add("TryGetNonEnumeratedCount", call =>
        {
            var count = QueryCalls.Of(call).Count(onlyIfCheap: true);
            call.Out(1, count ?? 0);
            return count is not null;
        });
        QueryCalls.Add("Any", call => call.Count > 1 ? Matching(call, QueryCalls.Of(call), call.Function(1)).Any() : Any(QueryCalls.Of(call)));
        QueryCalls.Add("All", call => !QueryCalls.Of(call).Items().Any(item => !Conditions.Holds(call.Function(1), call.Machine, item)));
        QueryCalls.Add("Contains", Contains);
        QueryCalls.Add("SequenceEqual", SequenceEqual);
        QueryCalls.Add("ToArray", call => Arrays.Of(QueryCalls.Of(call).All(), call.Method.TypeArguments.FirstOrDefault()));
        QueryCalls.Add("ToList", call => new ListValue(QueryCalls.Of(call).All()));
        QueryCalls.Add("ToHashSet", call => ToSet(call, SetValue.Type));
        QueryCalls.Add("ToDictionary", call => ToMap(call, MapValue.Type));
        FrameworkTable.Add(ImmutableNames.FrozenSet, "ToFrozenSet", call => ToSet(call, ImmutableNames.FrozenSet));
        FrameworkTable.Add(ImmutableNames.FrozenDictionary, "ToFrozenDictionary", call => ToMap(call, ImmutableNames.FrozenDictionary));
        FrameworkTable.Add(ImmutableNames.FrozenSet, "Create", call => ImmutableCalls.Make(ImmutableNames.FrozenSet, call));
        FrameworkTable.Add(ImmutableNames.Dictionary, "ToImmutableDictionary", call => ToMap(call, ImmutableNames.Dictionary));
        FrameworkTable.Add(ImmutableNames.SortedDictionary, "ToImmutableSortedDictionary", call => call.Parameter(1)?.PlainName == "Func" ? throw call.Unknown() : ImmutableCalls.Make(ImmutableNames.SortedDictionary, call));
    }

    public static ThrownByCode Missing() => new("System.InvalidOperationException", "The sequence has no such item.");

    private static IEnumerable<object?> Matching(Invocation call, Source source, FunctionValue predicate) => source.Items().Where(item => Conditions.Holds(predicate, call.Machine, item));

    private static FunctionValue? Predicate(Invocation call) => call.Parameter(1)?.PlainName == "Func" ? call.Function(1) : null;

    // The last argument of a call with "or default" may be that default.
    private static object? DefaultOf(Invocation call)
    {
        var last = call.Count - 1;
        return last > 0 && call.Parameter(last)?.PlainName is not ("Func" or "Index") && !call.Method.Name.StartsWith("ElementAt", StringComparison.Ordinal) ? call[last] : call.Default();
    }

    private static Found First(Invocation call, Source source) => Predicate(call) is not { } predicate ? source.First()
        : Source.FirstOf(Matching(call, source, predicate), call.Machine);

    // Of a list the last one is looked for from its end.
    private static Found Last(Invocation call, Source source)
    {
        if (Predicate(call) is not { } predicate)
            return source.Last();
        if (source.Value is OrderedQuery ordered)
            return ordered.Last(item => Conditions.Holds(predicate, call.Machine, item));
        if (!source.IsList)
            return Source.LastOf(Matching(call, source, predicate), call.Machine);
        for (var i = source.Length - 1; i >= 0; i--)
        {
            var item = source[i];
            if (Conditions.Holds(predicate, call.Machine, item))
                return Found.Of(item);
        }

        return Found.Nothing;
    }

    private static Found Single(Invocation call, Source source)
    {
        if (Predicate(call) is null && source.IsList)
            return source.Length <= 1 ? source.First() : throw Several();
        var found = Found.Nothing;
        foreach (var item in Predicate(call) is { } predicate ? Matching(call, source, predicate) : source.Items())
            found = found.IsThere ? throw Several() : Found.Of(item);
        return found;
    }

    private static ThrownByCode Several() => new("System.InvalidOperationException", "The sequence has more than one such item.");

    private static Found ElementAt(Invocation call, Source source)
    {
        if (call[1] is not IndexValue { FromEnd: true } fromEnd)
            return source.At(call[1] is IndexValue index ? index.Value : call.Whole(1));
        if (source.Count(onlyIfCheap: true) is { } count)
            return source.At(count - fromEnd.Value);
        var items = Sequences.ToLimitedList(source.Items());
        return fromEnd.Value > 0 && fromEnd.Value <= items.Count ? Found.Of(items[items.Count - fromEnd.Value]) : Found.Nothing;
    }

    private static int Count(Invocation call) => call.Count > 1
        ? Matching(call, QueryCalls.Of(call), call.Function(1)).Count()
        : QueryCalls.Of(call).Count(onlyIfCheap: false) ?? throw call.Unknown();

    private static bool Any(Source source) => source.Count(onlyIfCheap: true) is { } count ? count != 0 : source.First().IsThere;

    // A collection answers by itself, a set by its own comparer.
    private static object? Contains(Invocation call)
    {
        var source = QueryCalls.Of(call);
        if (call.Parameter(2) is null && FrameworkTypes.NameOf(source.Value) is { } type && source.Value is CollectionValue && FrameworkTable.Find(type, "Contains") is { } contains)
            return contains.Run(call);
        var rule = Equalities.Of(Making.ComparerOf(call), call.Machine);
        var wanted = call.Machine.Decide(call[1]);
        return (source.Query?.Unordered ?? source).Items().Any(item =>
            rule.Equals(Keys.Known(item), KnownEquality.IsKnown(wanted) ? wanted : throw call.Unknown()));
    }

    private static object? SequenceEqual(Invocation call)
    {
        var (first, second) = (QueryCalls.Of(call), QueryCalls.Of(call, 1));
        var rule = Equalities.Of(Making.ComparerOf(call), call.Machine);
        if (first.IsCounted && second.IsCounted && first.Length != second.Length)
            return false;
        using var others = second.Items().GetEnumerator();
        foreach (var item in first.Items())
        {
            if (!others.MoveNext() || !rule.Equals(Keys.Known(item), Keys.Known(others.Current)))
                return false;
        }

        return !others.MoveNext();
    }

    private static SetValue ToSet(Invocation call, string type)
    {
        var items = Sequences.ToLimitedList(QueryCalls.Of(call).Items());
        var comparer = Making.ComparerOf(call);
        var areKnown = comparer is not null || items.TrueForAll(KnownEquality.IsKnown);
        return new SetValue(areKnown ? items : [], Equalities.Of(comparer, call.Machine), type) { Comparer = comparer, IsOpen = !areKnown };
    }

    // By functions for keys and values, or of pairs. All are called, also where a key isn't known.
    private static MapValue ToMap(Invocation call, string type)
    {
        var comparer = Making.ComparerOf(call);
        var key = Predicate(call);
        var value = call.Parameter(2)?.PlainName == "Func" ? call.Function(2) : null;
        var map = new MapValue(new HashTable(Equalities.Of(comparer, call.Machine)), type) { Comparer = comparer };
        foreach (var item in QueryCalls.Of(call).Items())
        {
            var pair = key is null ? item as TupleValue ?? throw call.Unknown() : null;
            var made = pair is null ? key!.Invoke(call.Machine, item) : pair.Items[0];
            if (made is null)
                throw new ThrownByCode("System.ArgumentNullException", "A key is null.");
            var held = pair is null ? value is null ? item : value.Invoke(call.Machine, item) : pair.Items[1];
            if (comparer is null && !KnownEquality.IsKnown(made))
                map.IsOpen = true;
            if (map.IsOpen)
                continue;
            if (map.TryGet(made, out _) && (key is not null || type == MapValue.Type))
                throw MapCalls.Twice();
            map.Set(made, held);
        }

        return type == MapValue.Type ? map : Frozen(map, type);
    }

    private static MapValue Frozen(MapValue map, string type)
    {
        var frozen = (MapValue)map.Copy(type, isFixed: true);
        frozen.IsOpen = map.IsOpen;
        return frozen;
    }
}
