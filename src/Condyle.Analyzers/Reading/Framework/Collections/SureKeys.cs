namespace Condyle.Analyzers.Reading;

/// <summary>What is in a dictionary or set for certain although it isn't known what else is: what was just put there.</summary>
internal static class SureKeys
{
    /// <summary>A collection of which it isn't known what it holds is changed.</summary>
    public static void Change(HashedValue own, Invocation call)
    {
        var key = call.Machine.Decide(call[1]);
        switch (call.Method.Name)
        {
            case "set_Item" when call.Count == 3:
                foreach (var other in own.Sure?.Entries().Where(other => !IsKnown(other.Key) || !IsKnown(key)).ToList() ?? [])
                    own.PutSurely(other.Key, OpenValue.Any);
                Put(call[2]);
                break;
            case "Add" when call.Count == 3 || own is SetValue:
                Put(call[2]);
                break;
            case "TryAdd":
                if (CanBeFound(own, key) && (own.Sure is null || own.Sure.Find(key) < 0))
                    Put(OpenValue.Any);
                break;
            case "UnionWith" or "TrimExcess":
                break;
            default:
                own.IsOpen = true;
                break;
        }

        void Put(object? value)
        {
            if (CanBeFound(own, key))
                own.PutSurely(key, value);
        }
    }

    /// <summary>Asks for a key that may be there for certain.</summary>
    public static bool TryAnswer(HashedValue own, Invocation call, out object? answer)
    {
        answer = null;
        var asksForValue = call.Method.Name is "get_Item" or "TryGetValue" or "GetValueOrDefault";
        if (own.Sure is not { } sure || call.Count < 2 || !(call.Method.Name is "ContainsKey" or "Contains" || (asksForValue && own is MapValue)))
            return false;
        if (call.Machine.Decide(call[1]) is var key && (!CanBeFound(own, key) || sure.Find(key) < 0))
            return false;
        call.Machine.Calls.Observe(call[1]);
        var value = sure.At(sure.Find(key))!.Value;
        answer = asksForValue && call.Method.Name != "TryGetValue" ? value : true;
        if (call.Method.Name == "TryGetValue")
            call.Out(2, value);
        return true;
    }

    // A comparer may look into a key in ways of its own.
    private static bool CanBeFound(HashedValue own, object? key) => IsKnown(key) ? own.Comparer is null || key is TextValue : own.Comparer is null && key is TextValue { Identity: not null };

    private static bool IsKnown(object? key) => KnownEquality.IsKnown(key);
}
