namespace Condyle.Analyzers.Reading;

/// <summary>Bit arrays: lists of truth values whose length stays.</summary>
internal static class BitArrayCalls
{
    private const string Type = "System.Collections.BitArray";

    public static void Register()
    {
        var bits = new TypeMembers<ListValue>(Type);
        bits.Makes(Make);
        foreach (var name in new[] { "get_Count", "get_Length" })
            bits.Asks(name, (own, _) => own.Count);
        foreach (var name in new[] { "get_Item", "Get" })
            bits.Asks(name, (own, call) => own.List[Making.Place(call.Whole(1), own.Count)]);
        foreach (var name in new[] { "set_Item", "Set" })
        {
            bits.Changes(name, (own, call) =>
            {
                own.List[Making.Place(call.Whole(1), own.Count)] = call[2];
                own.Version++;
                return null;
            });
        }

        bits.Changes("SetAll", (own, call) => Write(own, _ => call[1]));
        bits.Changes("Not", (own, call) => Write(own, at => !call.Truth(own.List[at])));
        Both(bits, "And", (a, b) => a & b);
        Both(bits, "Or", (a, b) => a | b);
        Both(bits, "Xor", (a, b) => a ^ b);
        bits.Asks("HasAllSet", (own, call) => own.List.TrueForAll(call.Truth));
        bits.Asks("HasAnySet", (own, call) => own.List.Exists(call.Truth));
        bits.Asks("Clone", (own, _) => own.Copy(Type));
    }

    private static ListValue Make(Invocation call) => call[0] switch
    {
        int length when length >= 0 && length <= Limits.Items => new ListValue(Enumerable.Repeat(call[1] ?? false, length), Type),
        IStretch several when several.Now().All(item => item is bool) => new ListValue(several.Now(), Type),
        ListValue { IsOpen: false } other => new ListValue(other.List, Type),
        _ => throw call.Unknown(),
    };

    private static ListValue Write(ListValue own, Func<int, object?> item)
    {
        Budget.Current.Make(own.Count);
        var made = Enumerable.Range(0, own.Count).Select(item).ToList();
        for (var i = 0; i < made.Count; i++)
            own.List[i] = made[i];
        own.Version++;
        return own;
    }

    private static void Both(TypeMembers<ListValue> bits, string name, Func<bool, bool, bool> both) => bits.Changes(name, (own, call) =>
        call[1] is ListValue { IsOpen: false } other && other.Count == own.Count
            ? Write(own, at => both(call.Truth(own.List[at]), call.Truth(other.List[at])))
            : throw new ThrownByCode("System.ArgumentException", "Two bit arrays differ in length."));
}
