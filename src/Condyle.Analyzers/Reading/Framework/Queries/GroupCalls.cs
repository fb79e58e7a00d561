namespace Condyle.Analyzers.Reading;

/// <summary>The operators that bring items together by keys: groups, lookups, joins.</summary>
internal static class GroupCalls
{
    public static void Register()
    {
        QueryCalls.Add("GroupBy", GroupBy);
        QueryCalls.Add("ToLookup", call => LookupValue.Of(QueryCalls.Of(call).Items(), Rule(call), call.Machine, call.Function(1), Function(call, 2)));
        QueryCalls.Add("GroupJoin", call => Join(call, keepsOuter: true, (outer, group) => [Result(call, outer, (object?)group ?? Nothing())]));
        QueryCalls.Add("Join", call => Join(call, keepsOuter: false, (outer, group) => group?.List.Select(inner => Result(call, outer, inner)) ?? []));
        QueryCalls.Add("LeftJoin", call => Join(call, keepsOuter: true, (outer, group) => group is null ? [Result(call, outer, call.Default(1))] : group.List.Select(inner => Result(call, outer, inner))));
        QueryCalls.Add("RightJoin", RightJoin);
        QueryCalls.Add("CountBy", call => ByKey(call, _ => 0, (count, _) => (int)count! + 1));
        QueryCalls.Add("AggregateBy", call => ByKey(call, key => call.Parameter(2)?.PlainName == "Func" ? call.Function(2).Invoke(call.Machine, key) : call[2], (sum, item) => call.Function(3).Invoke(call.Machine, sum, item)));

        var group = new TypeMembers<GroupingValue>("System.Linq.IGrouping");
        group.Asks("get_Key", (own, _) => own.Key);
        group.Asks("get_Item", (own, call) => own.List[Making.Place(call.Whole(1), own.Count)]);
        Searching.Register(group, own => own.List);
        var lookup = new TypeMembers<LookupValue>("System.Linq.ILookup");
        lookup.Asks("get_Item", (own, call) => (object?)own.Find(call.Key(1)) ?? Nothing());
        lookup.Asks("Contains", (own, call) => own.Find(call.Key(1)) is not null);
    }

    private static ArrayValue Nothing() => new([]);

    private static object? Result(Invocation call, object? outer, object? inner) =>
        call.Parameter(4)?.PlainName == "Func" ? call.Function(4).Invoke(call.Machine, outer, inner) : new TupleValue([outer, inner]);

    private static FunctionValue? Function(Invocation call, int index) => call.Parameter(index)?.PlainName == "Func" ? call.Function(index) : null;

    private static IEqualityComparer<object?> Rule(Invocation call) => Equalities.Of(Making.ComparerOf(call), call.Machine);

    // After the key there may be a function for the elements, of one item, and one for the results, of a key and a group.
    private static object GroupBy(Invocation call)
    {
        var (source, key, rule) = (QueryCalls.Of(call), call.Function(1), Rule(call));
        FunctionValue? element = null, result = null;
        for (var i = 2; i < call.Count; i++)
        {
            if (call.Parameter(i) is { PlainName: "Func", Arguments.Count: 2 })
                element = call.Function(i);
            else if (call.Parameter(i) is { PlainName: "Func" })
                result = call.Function(i);
        }

        return new GroupQuery(call.Machine, source, () => LookupValue.Of(source.Items(), rule, call.Machine, key, element), result);
    }

    private static SequenceValue Join(Invocation call, bool keepsOuter, Func<object?, GroupingValue?, IEnumerable<object?>> results)
    {
        var (outer, inner, rule) = (QueryCalls.Of(call), QueryCalls.Of(call, 1), Rule(call));
        var (outerKey, innerKey) = (call.Function(2), call.Function(3));
        return QueryCalls.Lazy(call, _ => Items());

        // The inner sequence is only looked at when the outer one has an item.
        IEnumerable<object?> Items()
        {
            LookupValue? lookup = null;
            foreach (var item in outer.Items())
            {
                lookup ??= LookupValue.Of(inner.Items(), rule, call.Machine, innerKey, dropsNull: true);
                if (lookup.Count == 0 && !keepsOuter)
                    yield break;
                foreach (var result in results(item, lookup.Find(Keys.Known(outerKey.Invoke(call.Machine, item)))))
                    yield return result;
            }
        }
    }

    private static SequenceValue RightJoin(Invocation call)
    {
        var (outer, inner, rule) = (QueryCalls.Of(call), QueryCalls.Of(call, 1), Rule(call));
        var (outerKey, innerKey) = (call.Function(2), call.Function(3));
        return QueryCalls.Lazy(call, _ => Items());

        IEnumerable<object?> Items()
        {
            LookupValue? lookup = null;
            foreach (var item in inner.Items())
            {
                lookup ??= LookupValue.Of(outer.Items(), rule, call.Machine, outerKey, dropsNull: true);
                var group = lookup.Find(Keys.Known(innerKey.Invoke(call.Machine, item)));
                foreach (var left in group?.List ?? [call.Default()])
                    yield return Result(call, left, item);
            }
        }
    }

    private static SequenceValue ByKey(Invocation call, Func<object?, object?> seed, Func<object?, object?, object?> fold)
    {
        var (key, rule) = (call.Function(1), Rule(call));
        return QueryCalls.Lazy(call, Items);

        IEnumerable<object?> Items(Source source)
        {
            var sums = new HashTable(rule);
            foreach (var item in source.Items())
            {
                var made = Keys.Known(key.Invoke(call.Machine, item));
                var place = sums.Find(made);
                var sum = fold(place >= 0 ? sums.At(place)!.Value : seed(made), item);
                if (place >= 0)
                    sums.Set(place, sum);
                else
                    sums.Add(made, sum);
            }

            foreach (var entry in sums.Entries())
                yield return new TupleValue([entry.Key, entry.Value], isPair: true);
        }
    }
}
