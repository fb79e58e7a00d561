namespace Condyle.Analyzers.Reading;

/// <summary>Queries of what isn't known: their functions are called for each of an unknown number of items, when those are asked for.</summary>
internal static class OpenQueries
{
    /// <summary>The sequence that an operator makes of something unknown.</summary>
    public static OpenSequence Of(Invocation call) => new(() => ItemOf(call));

    /// <summary>Runs an operator that asks for all items of something unknown.</summary>
    public static OpenValue Run(Invocation call)
    {
        call.Machine.AnyNumberOfTimes(() => ItemOf(call));
        return OpenValue.Any;
    }

    /// <summary>Whether what an operator reads isn't known.</summary>
    public static bool IsOpen(Invocation call) =>
        Enumerable.Range(0, Math.Min(call.Count, 3)).Any(at => call[at] is OpenSequence || (call[at] is not null and not FunctionValue && IsSequence(call.Parameter(at)) && !Sequences.CanBeRead(call[at], call.Machine)));

    private static bool IsSequence(TypeKey? type) => type?.PlainName is "IEnumerable" or "IOrderedEnumerable" or "ImmutableArray" || type?.Shape == TypeShape.Array;

    // Any item of any of the sequences may come; each function is called with it.
    private static object? ItemOf(Invocation call)
    {
        var machine = call.Machine;
        object? item = null;
        for (var i = 0; i < call.Count; i++)
        {
            machine.Lost.Add(call[i]);
            if (call[i] is OpenSequence sequence)
                item = sequence.Item();
            else if (IsSequence(call.Parameter(i)) && Sequences.ListOf(call[i], machine) is { Count: > 0 } known)
                item = known.Aggregate((a, b) => KnownEquality.Same.Equals(a, b) ? a : OpenValue.Any);
            else if (i == 0)
                item = Opens.Of(call.Method.TypeArguments.FirstOrDefault(), machine);
        }

        if (item == OpenValue.Any)
            item = Opens.Of(call.Method.TypeArguments.FirstOrDefault(), machine);
        object? made = null;
        for (var i = 1; i < call.Count; i++)
        {
            if (call[i] is FunctionValue function)
                made = OpenCalls.Invoke(function, call, i, item);
            else if (call[i] is OpenValue && OpenCalls.IsFunction(call, i))
                UnknownCode.Touch(machine, [item], machine.Here, "a delegate", UnknownCode.NotKnownWhich);
        }

        var type = call.Method.Returns?.Arguments.FirstOrDefault();
        return call.Method.Name switch
        {
            "Select" => made,
            "Where" or "Take" or "Skip" or "TakeWhile" or "SkipWhile" or "TakeLast" or "SkipLast" or "OrderBy" or "OrderByDescending" or "ThenBy" or "ThenByDescending" or "Order" or "OrderDescending"
                or "Reverse" or "Distinct" or "DistinctBy" or "AsEnumerable" => item,
            "SelectMany" when call.Count == 2 && made is OpenSequence inner => inner.Item(),
            _ => Opens.Of(type, machine),
        };
    }
}
