namespace Condyle.Analyzers.Reading;

/// <summary>The operators that take sequences as sets.</summary>
internal static class SetQueryCalls
{
    public static void Register()
    {
        QueryCalls.Add("Distinct", call => new DistinctQuery(call.Machine, [QueryCalls.Of(call)], Rule(call)));
        QueryCalls.Add("Union", call => QueryCalls.Of(call).Value is DistinctQuery union && union.IsUnionBy(Rule(call))
            ? union.With(QueryCalls.Of(call, 1))
            : new DistinctQuery(call.Machine, [QueryCalls.Of(call), QueryCalls.Of(call, 1)], Rule(call)));
        QueryCalls.Add("DistinctBy", call => QueryCalls.Lazy(call, source => New(source.Items(), new HashTable(Rule(call)), Key(call, 1))));
        QueryCalls.Add("UnionBy", call => QueryCalls.Of(call, 1) is var second
            ? QueryCalls.Lazy(call, source => New(source.Items().Concat(second.Items()), new HashTable(Rule(call)), Key(call, 2)))
            : null);
        QueryCalls.Add("Except", call => Against(call, item => item, (seen, key) => Keys.IsNew(seen, key)));
        QueryCalls.Add("ExceptBy", call => Against(call, Key(call, 2), (seen, key) => Keys.IsNew(seen, key)));
        QueryCalls.Add("Intersect", call => Against(call, item => item, Removes));
        QueryCalls.Add("IntersectBy", call => Against(call, Key(call, 2), Removes));
    }

    private static IEqualityComparer<object?> Rule(Invocation call) => Equalities.Of(Making.ComparerOf(call), call.Machine);

    private static Func<object?, object?> Key(Invocation call, int index) => call.Function(index) is var key ? item => key.Invoke(call.Machine, item) : item => item;

    private static IEnumerable<object?> New(IEnumerable<object?> items, HashTable seen, Func<object?, object?> key) => items.Where(item => Keys.IsNew(seen, key(item)));

    // The second sequence is read whole before the first one.
    private static SequenceValue Against(Invocation call, Func<object?, object?> key, Func<HashTable, object?, bool> isKept)
    {
        var (second, rule) = (QueryCalls.Of(call, 1), Rule(call));
        return QueryCalls.Lazy(call, Items);

        IEnumerable<object?> Items(Source source)
        {
            var seen = new HashTable(rule);
            foreach (var item in second.Items())
                Keys.IsNew(seen, item);
            foreach (var item in source.Items())
            {
                if (isKept(seen, key(item)))
                    yield return item;
            }
        }
    }

    private static bool Removes(HashTable seen, object? key)
    {
        var place = seen.Find(Keys.Known(key));
        if (place >= 0)
            seen.RemoveAt(place);
        return place >= 0;
    }
}
