namespace Condyle.Analyzers.Reading;

/// <summary>Tuples and the pairs of dictionaries.</summary>
internal static class TupleCalls
{
    private const int Most = 7;
    private const string Pair = CollectionValue.Generic + "KeyValuePair";

    public static void Register()
    {
        FrameworkTable.Add(Pair, ".ctor", call => NewPair(call));
        FrameworkTable.Add(Pair, "Create", call => NewPair(call));
        var pair = new TypeMembers<TupleValue>(Pair);
        pair.Asks("get_Key", (own, _) => own.Items[0]);
        pair.Asks("get_Value", (own, _) => own.Items[1]);
        foreach (var type in new[] { Pair, "System.Tuple", "System.ValueTuple" })
        {
            var tuple = new TypeMembers<TupleValue>(type);
            tuple.Asks("Deconstruct", Deconstruct);
            tuple.Asks("ToString", (own, call) => TextOf.Of(own, call.Machine));
            tuple.Asks("Equals", (own, call) => call.Key(0) is var key && call.Key(1) is TupleValue other ? call.Machine.Equality.Equals(key, other) : false);
            tuple.Asks("CompareTo", (own, call) => Orders.Default(call.Machine).Compare(own, call[1]));
        }

        FrameworkTable.Add("System.ValueTuple", "Create", call => new TupleValue([.. call.Arguments]));
        FrameworkTable.Add("System.ValueTuple", ".ctor", call => new TupleValue([.. call.Arguments]));
        FrameworkTable.Add("System.Tuple", "Create", call => new TupleValue([.. call.Arguments]) { IsObject = true });
        FrameworkTable.Add("System.Tuple", ".ctor", call => new TupleValue([.. call.Arguments]) { IsObject = true });
        for (var i = 1; i <= Most; i++)
        {
            var at = i - 1;
            new TypeMembers<TupleValue>("System.Tuple").Asks("get_Item" + i, (own, call) => at < own.Items.Length ? own.Items[at] : throw call.Unknown());
        }
    }

    private static TupleValue NewPair(Invocation call) => new([call[0], call[1]], isPair: true);

    private static object? Deconstruct(TupleValue own, Invocation call)
    {
        for (var i = 0; i < own.Items.Length; i++)
            call.Out(i + 1, own.Items[i]);
        return null;
    }
}
