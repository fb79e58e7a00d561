namespace Condyle.Analyzers.Reading;

/// <summary>The operators that take a stretch of a sequence.</summary>
internal static class StretchCalls
{
    public static void Register()
    {
        QueryCalls.Add("Skip", call => Skip(call, QueryCalls.Of(call), call.Whole(1)));
        QueryCalls.Add("Take", call => call[1] is RangeValue range ? Take(call, range) : Take(call, QueryCalls.Of(call), call.Whole(1)));
        QueryCalls.Add("TakeLast", call => call.Whole(1) <= 0 ? Empty(call) : FromEnd(call, new IndexValue(call.Whole(1), FromEnd: true), new IndexValue(0, FromEnd: true)));
        QueryCalls.Add("SkipLast", call => call.Whole(1) <= 0 ? Skip(call, QueryCalls.Of(call), 0) : FromEnd(call, new IndexValue(0, FromEnd: false), new IndexValue(call.Whole(1), FromEnd: true)));
        QueryCalls.Add("TakeWhile", call => QueryCalls.Lazy(call, source => QueryCalls.Indexed(source).TakeWhile(pair => Holds(call, pair)).Select(pair => pair.Item)));
        QueryCalls.Add("SkipWhile", call => QueryCalls.Lazy(call, source => QueryCalls.Indexed(source).SkipWhile(pair => Holds(call, pair)).Select(pair => pair.Item)));
    }

    private static bool Holds(Invocation call, (object? Item, int Index) pair) => QueryCalls.IsIndexed(call)
        ? Conditions.Holds(call.Function(1), call.Machine, pair.Item, pair.Index)
        : Conditions.Holds(call.Function(1), call.Machine, pair.Item);

    private static SequenceValue Empty(Invocation call)
    {
        QueryCalls.Of(call);
        return new EmptyQuery(call.Machine);
    }

    private static SequenceValue Skip(Invocation call, Source source, int count)
    {
        if (count <= 0 && source.Query is { } whole)
            return whole;
        count = Math.Max(0, count);
        return source switch
        {
            { Query: { } query } => query.Skip(count),
            { IsList: true } => new ListStretchQuery(call.Machine, source, count, int.MaxValue),
            _ => new StretchQuery(call.Machine, source, count, null),
        };
    }

    private static SequenceValue Take(Invocation call, Source source, int count) => source switch
    {
        _ when count <= 0 => new EmptyQuery(call.Machine),
        { Query: { } query } => query.Take(count),
        { IsList: true } => new ListStretchQuery(call.Machine, source, 0, count - 1),
        _ => new StretchQuery(call.Machine, source, 0, count),
    };

    private static SequenceValue Take(Invocation call, RangeValue range)
    {
        var (start, end) = (range.Start, range.End);
        if (!start.FromEnd && !end.FromEnd)
            return start.Value >= end.Value ? Empty(call) : Stretch(call, QueryCalls.Of(call), start.Value, end.Value);
        return start.FromEnd && (start.Value == 0 || (end.FromEnd && end.Value >= start.Value)) ? Empty(call) : FromEnd(call, start, end);
    }

    private static SequenceValue Stretch(Invocation call, Source source, int start, int end) =>
        Take(call, new Source(Skip(call, source, start), call.Machine), end - start);

    private static SequenceValue FromEnd(Invocation call, IndexValue start, IndexValue end)
    {
        var source = QueryCalls.Of(call);
        return new SequenceValue(Items, source.Depth + 1);

        IEnumerable<object?> Items()
        {
            if (source.Count(onlyIfCheap: true) is { } count)
            {
                var (first, last) = Places(count);
                return first < last ? Stretch(call, source, first, last) : [];
            }

            return start.FromEnd ? Ending() : Dropping();
        }

        (int First, int Last) Places(int count) => (Math.Max(0, start.Of(count)), Math.Min(count, end.Of(count)));

        // No more are kept than may be handed out.
        IEnumerable<object?> Ending()
        {
            var kept = new Queue<object?>();
            var count = 0;
            foreach (var item in source.Items())
            {
                if (kept.Count == start.Value)
                    kept.Dequeue();
                kept.Enqueue(item);
                count++;
            }

            var (first, last) = Places(count);
            for (var i = first; i < last; i++)
                yield return kept.Dequeue();
        }

        // An item is handed out as soon as enough others have come after it.
        IEnumerable<object?> Dropping()
        {
            var waiting = new Queue<object?>();
            var skipped = 0;
            foreach (var item in source.Items())
            {
                if (skipped++ < start.Value)
                    continue;
                waiting.Enqueue(item);
                if (waiting.Count > end.Value)
                    yield return waiting.Dequeue();
            }
        }
    }
}
