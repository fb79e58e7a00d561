namespace Condyle.Analyzers.Reading;

/// <summary>Enumerators that the code moves on by itself, and lazy values.</summary>
internal static class EnumeratorCalls
{
    private const string Type = "System.Collections.IEnumerator";

    public static void Register()
    {
        FrameworkTable.Add(ViewCalls.Any, "GetEnumerator", Get);
        FrameworkTable.Add("System.String", "GetEnumerator", Get);
        FrameworkTable.Add("System.Collections.Generic.IEnumerable", "GetEnumerator", Get);
        FrameworkTable.Add(FrameworkTypes.Items, "GetEnumerator", Get);
        var enumerator = new TypeMembers<EnumeratorValue>(Type);
        enumerator.Changes("MoveNext", MoveNext);
        enumerator.Asks("get_Current", (own, call) => own.IsAtItem ? own.Current : throw call.Unknown());
        enumerator.Changes("Dispose", (own, _) =>
        {
            own.Dispose();
            return null;
        });
        var lazy = new TypeMembers<LazyValue>("System.Lazy");
        lazy.Makes(call => call[0] switch
        {
            FunctionValue make => new LazyValue(machine => make.Invoke(machine)),
            null or bool or EnumValue => throw call.Unknown(),
            _ when call.Parameter(0)?.PlainName == "Func" => throw call.Unknown(),
            var value => LazyValue.Of(value),
        });
        lazy.Asks("get_Value", (own, call) => own.Value(call.Machine));
        lazy.Asks("get_IsValueCreated", (own, _) => own.IsMade);
    }

    private static object Get(Invocation call) => Of(call[0], call.Machine) ?? throw call.Unknown();

    /// <summary>An enumerator of a value; none when what it holds isn't known.</summary>
    public static EnumeratorValue? Of(object? value, Machine machine)
    {
        if (value is CollectionValue { IsOpen: true } || Sequences.Of(value, machine) is not { } items)
            return null;
        return new EnumeratorValue(value is CollectionValue own ? own.GetEnumerator : items.GetEnumerator, value is SequenceValue).Begun();
    }

    // Where it isn't sure that this is reached at all, moving on must not run code: another way would not run it again.
    private static object? MoveNext(EnumeratorValue own, Invocation call)
    {
        if (own.RunsCode && !own.KnowsNext && call.Machine.IsSpeculating)
            throw call.Unknown();
        return own.MoveNext();
    }
}
