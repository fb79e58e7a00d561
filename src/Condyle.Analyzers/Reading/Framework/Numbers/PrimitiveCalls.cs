namespace Condyle.Analyzers.Reading;

/// <summary>What all plain values can do: be compared, and be written as text.</summary>
internal static class PrimitiveCalls
{
    private static readonly string[] Types =
        ["SByte", "Byte", "Int16", "UInt16", "Int32", "UInt32", "Int64", "UInt64", "Single", "Double", "Decimal", "Boolean", "Char", "Enum"];

    public static void Register()
    {
        foreach (var name in Types)
        {
            var type = "System." + name;
            FrameworkTable.Add(type, "CompareTo", new FrameworkMethod(Compare) { NeedsAll = true });
            FrameworkTable.Add(type, "Equals", new FrameworkMethod(call => AreEqual(call[0], call[1])) { NeedsAll = true });
        }

        foreach (var type in Types.Concat(["Object", "ValueType", "Nullable", "IFormattable"]))
            FrameworkTable.Add("System." + type, "ToString", ToText);
    }

    // Not a number equals itself here, unlike with the operator.
    private static bool AreEqual(object? a, object? b) => KnownEquality.Instance.Equals(a, b);

    private static object? Compare(Invocation call)
    {
        if (call[1] is null)
            return 1;
        return (EnumValue.NumberOf(call[0]), EnumValue.NumberOf(call[1])) is (IComparable own, { } other) && own.GetType() == other.GetType()
            ? own.CompareTo(other)
            : throw new ThrownByCode("System.ArgumentException", "Only values of the same type can be compared.");
    }

    // The format and the culture may be left out, and stand in this order.
    private static object ToText(Invocation call)
    {
        var format = call.Arguments.Skip(1).FirstOrDefault(argument => argument is TextValue) as TextValue;
        if (format is { Text.IsOpen: true })
            return TextValue.Open;
        return TextOf.Of(call[0], call.Machine, format?.ToString(), call.Arguments.Contains(OtherCalls.InvariantCulture));
    }
}
