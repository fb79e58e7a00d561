namespace Condyle.Analyzers.Reading;

/// <summary>The collections of <c>System.Collections.Concurrent</c>, as one thread sees them.</summary>
internal static class ConcurrentCalls
{
    private const string Space = "System.Collections.Concurrent.";

    public static void Register()
    {
        foreach (var (type, isStack) in new[] { (Space + "ConcurrentQueue", false), (Space + "ConcurrentStack", true) })
            LineCalls.Register(type, isStack, call => LineCalls.Make(call, type, isStack));

        var map = new TypeMembers<MapValue>(MapValue.Concurrent);
        map.Makes(call => MapCalls.Make(call, MapValue.Concurrent));
        MapCalls.Ask(map);
        MapCalls.Change(map);
        map.Asks("get_Comparer", (own, _) => own.Comparer ?? ComparerCalls.Default);
        map.Asks("ToArray", (own, _) => Arrays.Of(own.Items()));
        map.Changes("TryRemove", (own, call) => FrameworkTable.Find(MapValue.Type, "Remove")!.Run(call));
        map.Changes("TryUpdate", (own, call) =>
        {
            var key = MapCalls.Key(call, own, 1);
            if (!own.TryGet(key, out var value) || !call.Machine.Equality.Equals(value, call.Key(3)))
                return false;
            own.Set(key, call[2]);
            return true;
        });
        map.Changes("GetOrAdd", (own, call) =>
        {
            var key = MapCalls.Key(call, own, 1);
            return own.TryGet(key, out var value) ? value : Set(own, key, MakesValue(call) ? Made(call, 2, key, 3) : call[2]);
        });
        map.Changes("AddOrUpdate", (own, call) =>
        {
            var key = MapCalls.Key(call, own, 1);
            return Set(own, key, own.TryGet(key, out var value) ? Made(call, 3, key, 4, value) : MakesValue(call) ? Made(call, 2, key, 4) : call[2]);
        });
    }

    // Values may be functions themselves: one that makes a value returns one.
    private static bool MakesValue(Invocation call) =>
        call.Parameter(1) is { PlainName: "Func", Arguments: { Count: > 0 } parts } && call.Method.TypeArguments is { Count: > 1 } arguments && parts[parts.Count - 1].Equals(arguments[1]);

    // The functions get the key, the value that is there, and what else was given.
    private static object? Made(Invocation call, int function, object? key, int further, params object?[] value) =>
        call.Function(function).Invoke(call.Machine, [key, .. value, .. call.Arguments.Skip(further)]);

    private static object? Set(MapValue own, object? key, object? value)
    {
        own.Set(key, value);
        return value;
    }
}
