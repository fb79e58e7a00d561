namespace Condyle.Analyzers.Reading;

/// <summary>The operators that make one sequence of another, item by item.</summary>
internal static class QueryCalls
{
    public const string Type = "System.Linq.Enumerable";

    public static void Register()
    {
        Add("Select", call => Select(call));
        Add("Where", call => IsIndexed(call) ? Lazy(call, source => Indexed(source).Where(pair => Conditions.Holds(call.Function(1), call.Machine, pair.Item, pair.Index)).Select(pair => pair.Item))
            : IsEmptyArray(Of(call).Value) ? new EmptyQuery(call.Machine)
            : new WhereQuery(call.Machine, Of(call), call.Function(1)));
        Add("SelectMany", SelectMany);
        Add("OfType", call => TypeOf(call).IsReference || !IsOf(call) ? new CastQuery(call.Machine, Of(call), TypeOf(call), throws: false) : call[0]);
        Add("Cast", call => IsOf(call) ? call[0] : new CastQuery(call.Machine, Of(call), TypeOf(call), throws: true));
        Add("AsEnumerable", call => call[0]);
        Add("Append", call => Of(call).Value is EndsQuery ends ? ends.With(call[1], isAfter: true) : new EndsQuery(call.Machine, Of(call), [], [call[1]]));
        Add("Prepend", call => Of(call).Value is EndsQuery ends ? ends.With(call[1], isAfter: false) : new EndsQuery(call.Machine, Of(call), [call[1]], []));
        Add("Concat", Concat);
        Add("Reverse", call => new ReverseQuery(call.Machine, Of(call)));
        Add("DefaultIfEmpty", call => new DefaultQuery(call.Machine, Of(call), call.Count > 1 ? call[1] : call.Default()));
        Add("Index", call => Lazy(call, source => Indexed(source).Select(pair => (object?)new TupleValue([pair.Index, pair.Item]))));
        Add("Zip", Zip);
        Add("Chunk", call => call.Whole(1) is var size && size > 0 ? Lazy(call, source => Chunks(source, size)) : throw Making.OutOfRange());
        Add("Shuffle", _ => OpenValue.Any);
        Rows();
        Orders();
    }

    // With an empty array there is nothing to do, and the other one is handed on as it is.
    private static object? Concat(Invocation call)
    {
        var (first, second) = (Of(call), Of(call, 1));
        return IsEmptyArray(first.Value) ? call[1] : IsEmptyArray(second.Value) ? call[0] : new ConcatQuery(call.Machine, first, second);
    }

    private static bool IsEmptyArray(object? value) => value is ArrayValue { Items.Length: 0 } or EmptyQuery;

    /// <summary>What a call reads from.</summary>
    public static Source Of(Invocation call, int index = 0) => call[index] switch
    {
        null => throw new ThrownByCode("System.ArgumentNullException", "The sequence is null."),
        OpenValue or CollectionValue { IsOpen: true } => throw call.Unknown(),
        var value => Sequences.CanBeRead(value, call.Machine) ? new Source(value, call.Machine) : throw call.Unknown(),
    };

    /// <summary>A sequence that answers nothing but its items.</summary>
    public static SequenceValue Lazy(Invocation call, Func<Source, IEnumerable<object?>> items)
    {
        var source = Of(call);
        for (var i = 1; i < call.Count; i++)
        {
            if (call.Parameter(i)?.PlainName == "Func")
                call.Function(i);
        }

        return new SequenceValue(() => items(source), source.Depth + 1);
    }

    /// <summary>An operator; some are declared again for immutable arrays.</summary>
    public static void Add(string name, Func<Invocation, object?> run)
    {
        FrameworkTable.Add(Type, name, Checked);
        FrameworkTable.Add("System.Linq.ImmutableArrayExtensions", name, Checked);

        object? Checked(Invocation call) => !OpenQueries.IsOpen(call) ? IsLazy(call) ? Begun(call, run) : run(call) : IsLazy(call) ? OpenQueries.Of(call) : OpenQueries.Run(call);
    }

    private static object? Begun(Invocation call, Func<Invocation, object?> run)
    {
        try
        {
            return run(call);
        }
        catch (AnswerIsOpen)
        {
            return OpenQueries.Of(call);
        }
    }

    private static bool IsLazy(Invocation call) => call.Method.Returns?.PlainName is "IEnumerable" or "IOrderedEnumerable";

    /// <summary>Whether the function that a call is handed takes an item's place as well.</summary>
    public static bool IsIndexed(Invocation call, int index = 1) => call.Parameter(index) is { PlainName: "Func", Arguments.Count: 3 };

    public static IEnumerable<(object? Item, int Index)> Indexed(Source source)
    {
        var index = 0;
        foreach (var item in source.Items())
            yield return (item, index++);
    }

    private static SequenceValue Select(Invocation call)
    {
        var (machine, source, selector) = (call.Machine, Of(call), call.Function(1));
        if (IsIndexed(call))
            return Lazy(call, _ => Indexed(source).Select(pair => selector.Invoke(machine, pair.Item, pair.Index)));
        return source.Value switch
        {
            ArrayValue { Items.Length: 0 } => new EmptyQuery(machine),
            ListStretchQuery stretch => stretch.Select(selector),
            WhereQuery or SelectQuery { PassesStretches: false } => new SelectQuery(machine, source, selector, passesStretches: false),
            RowQuery => new ListSelectQuery(machine, source, selector),
            Query => new SelectQuery(machine, source, selector, passesStretches: true),
            _ when source.IsList => new ListSelectQuery(machine, source, selector),
            _ => new SelectQuery(machine, source, selector, passesStretches: false),
        };
    }

    private static SequenceValue SelectMany(Invocation call)
    {
        var (machine, source, selector) = (call.Machine, Of(call), call.Function(1));
        if (call.Count == 2 && !IsIndexed(call))
            return new SelectManyQuery(machine, source, selector);
        var result = call.Count > 2 ? call.Function(2) : null;
        return Lazy(call, _ => Parts());

        IEnumerable<object?> Parts()
        {
            foreach (var (item, index) in Indexed(source))
            {
                var part = selector.Invoke(machine, item, index) ?? throw new ThrownByCode("System.NullReferenceException", "A part of a query is null.");
                foreach (var inner in new Source(part, machine).Items())
                    yield return result is null ? inner : result.Invoke(machine, item, inner);
            }
        }
    }

    private static SequenceValue Zip(Invocation call)
    {
        var (first, second) = (Of(call), Of(call, 1));
        if (call.Parameter(2)?.PlainName == "Func")
            return Lazy(call, _ => first.Items().Zip(second.Items(), (a, b) => call.Function(2).Invoke(call.Machine, a, b)));
        var third = call.Count > 2 ? Of(call, 2) : null;
        return Lazy(call, _ => Rows(third is null ? [first, second] : [first, second, third]));
    }

    private static IEnumerable<object?> Rows(IReadOnlyList<Source> sources)
    {
        var all = sources.Select(source => source.Items().GetEnumerator()).ToList();
        try
        {
            while (all.TrueForAll(items => items.MoveNext()))
                yield return new TupleValue([.. all.Select(items => items.Current)]);
        }
        finally
        {
            all.ForEach(items => items.Dispose());
        }
    }

    private static IEnumerable<object?> Chunks(Source source, int size)
    {
        var chunk = new List<object?>();
        foreach (var item in source.Items())
        {
            chunk.Add(item);
            if (chunk.Count < size)
                continue;
            yield return Arrays.Of(chunk);
            chunk = [];
        }

        if (chunk.Count > 0)
            yield return Arrays.Of(chunk);
    }

    // What is a sequence of the type already stays what it is.
    private static bool IsOf(Invocation call) => FrameworkTypes.ItemsOf(Of(call).Value) is { } type && (TypeOf(call).Equals(type) || (TypeOf(call).Id == "object" && type.IsReference));

    private static TypeKey TypeOf(Invocation call) => call.Method.TypeArguments.LastOrDefault() ?? throw call.Unknown();

    private static void Rows()
    {
        Add("Empty", _ => new ArrayValue([]));
        Add("Range", call => (call.Whole(0), call.Whole(1)) is var (start, count) && count >= 0 && (long)start + count - 1 <= int.MaxValue
            ? new RowQuery(call.Machine, count, place => start + place)
            : throw Making.OutOfRange());
        Add("Repeat", call => call.Whole(1) is var count && count >= 0 ? new RowQuery(call.Machine, count, _ => call[0]) : throw Making.OutOfRange());
        Add("Sequence", call => NumberRows.Sequence(call));
        Add("InfiniteSequence", call => NumberRows.Endless(call));
    }

    private static void Orders()
    {
        foreach (var (name, isDescending) in new[] { ("", false), ("Descending", true) })
        {
            Add("Order" + name, call => new OrderedQuery(call.Machine, Of(call), [new OrderedQuery.Level(null, Reading.Orders.Of(call[1], call.Machine), isDescending)]));
            Add("OrderBy" + name, call => new OrderedQuery(call.Machine, Of(call), [LevelOf(call, isDescending)]));
            Add("ThenBy" + name, call => call[0] switch
            {
                null => throw new ThrownByCode("System.ArgumentNullException", "The sequence is null."),
                OrderedQuery ordered => ordered.ThenBy(LevelOf(call, isDescending)),
                _ => throw call.Unknown(),
            });
        }
    }

    private static OrderedQuery.Level LevelOf(Invocation call, bool isDescending) => new(call.Function(1), Reading.Orders.Of(call[2], call.Machine), isDescending);
}
