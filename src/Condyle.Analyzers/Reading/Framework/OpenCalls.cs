namespace Condyle.Analyzers.Reading;

/// <summary>How functions are called with what isn't known.</summary>
internal static class OpenCalls
{
    /// <summary>Calls a function that is an argument of a call, with unknown values of the types that it takes; some of its first ones may be given.</summary>
    public static object? Invoke(FunctionValue function, Invocation call, int index, params object?[] given)
    {
        var taken = Taken(call.ParameterOf(index)).ToList();
        return function.Invoke(call.Machine, [.. taken.Select((type, at) => at < given.Length ? given[at] : Opens.Of(type, call.Machine)), .. given.Skip(taken.Count)]);
    }

    /// <summary>Whether an argument is a function that isn't known.</summary>
    public static bool IsFunction(Invocation call, int index) => call.ParameterOf(index)?.PlainName is "Func" or "Action" or "Predicate" or "Comparison" or "Converter";

    /// <summary>The types that a delegate's parameters have.</summary>
    private static IEnumerable<TypeKey> Taken(TypeKey? function) => function?.PlainName switch
    {
        "Func" or "Converter" => function.Arguments.Take(function.Arguments.Count - 1),
        "Comparison" => [.. function.Arguments, .. function.Arguments],
        _ => function?.Arguments ?? [],
    };
}
