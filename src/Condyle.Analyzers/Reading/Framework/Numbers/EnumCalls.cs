namespace Condyle.Analyzers.Reading;

/// <summary><c>Enum</c>: its names and values, and texts that stand for them.</summary>
internal static class EnumCalls
{
    private const string Type = "System.Enum";

    public static void Register()
    {
        FrameworkTable.Add(Type, "GetValues", call => new ArrayValue([.. InOrder(call).Select(member => (object?)new EnumValue(TypeOf(call), member.Value))]));
        FrameworkTable.Add(Type, "GetNames", call => new ArrayValue([.. InOrder(call).Select(member => (object?)TextValue.Plain(member.Key))]));
        FrameworkTable.Add(Type, "IsDefined", call => call[0] is EnumValue value && TypeOf(call) is var type ? type.Members.Any(member => member.Value.Equals(value.Number)) : throw call.Unknown());
        FrameworkTable.Add(Type, "GetName", NameOf);
        FrameworkTable.Add(Type, "HasFlag", call => (call[0], call[1]) switch
        {
            (EnumValue own, EnumValue flag) when own.Type.Id != flag.Type.Id => throw new ThrownByCode("System.ArgumentException", "A flag of another enum is asked for."),
            (EnumValue own, EnumValue flag) => (Bits(own.Number) & Bits(flag.Number)) == Bits(flag.Number),
            _ => throw call.Unknown(),
        });
        FrameworkTable.Add(Type, "Parse", call => Read(call) is { } read ? read.Value ?? throw new ThrownByCode("System.ArgumentException", "The enum has no such value.")
            : Opens.Of(call.Method.Returns, call.Machine, canFork: true));
        FrameworkTable.Add(Type, "TryParse", call =>
        {
            if (Read(call) is not { } read)
                throw call.Unknown();
            call.Out(call.Count - 1, read.Value ?? Defaults.Of(TypeOf(call), call.Machine));
            return read.Value is not null;
        });
    }

    private static TypeKey TypeOf(Invocation call) => call.Method.TypeArguments is [{ Shape: TypeShape.Enum } type] ? type : throw call.Unknown();

    // Of several names of one value, which is taken isn't said.
    private static TextValue? NameOf(Invocation call)
    {
        var value = call[0] as EnumValue ?? throw call.Unknown();
        var named = TypeOf(call).Members.Where(member => member.Value.Equals(value.Number)).ToList();
        return named.Count > 1 ? TextValue.Open : named.Count == 1 ? TextValue.Plain(named[0].Key) : null;
    }

    // In the order of their bits, negative ones last; of one value, as they are declared.
    private static IEnumerable<KeyValuePair<string, object>> InOrder(Invocation call) => TypeOf(call).Members.OrderBy(member => Bits(member.Value));

    // A text may hold several names, or a number.
    private static (EnumValue? Value, bool IsKnown)? Read(Invocation call)
    {
        var type = TypeOf(call);
        if (call[0] is not TextValue text || !text.TryKnown(out var known))
            return call[0] is null && call.Method.Name == "TryParse" ? (null, true) : call[0] is null ? throw new ThrownByCode("System.ArgumentNullException", "The text of an enum is null.") : null;
        call.Machine.Calls.Observe(text);
        var how = call[1] is true ? StringComparison.OrdinalIgnoreCase : StringComparison.Ordinal;
        var sum = 0UL;
        foreach (var part in known.Split(',').Select(part => part.Trim()))
        {
            if (part.Length == 0)
                return (null, true);
            if (part[0] is '-' or '+' or (>= '0' and <= '9'))
                return known.Contains(',') ? null : (Numbered(type, part), true);
            var member = type.Members.FirstOrDefault(member => string.Equals(member.Key, part, StringComparison.Ordinal));
            if (member.Key is null)
                member = type.Members.FirstOrDefault(member => string.Equals(member.Key, part, how));
            if (member.Key is null)
                return (null, true);
            sum |= Bits(member.Value);
        }

        return (new EnumValue(type, NumberConversions.Convert(sum, type.Element!.Shape, false)!), true);
    }

    private static EnumValue? Numbered(TypeKey type, string text)
    {
        if (!decimal.TryParse(text, System.Globalization.NumberStyles.AllowLeadingSign, System.Globalization.CultureInfo.InvariantCulture, out var number))
            return null;
        try
        {
            return new EnumValue(type, NumberConversions.Convert(number, type.Element!.Shape, isChecked: true)!);
        }
        catch (ThrownByCode)
        {
            return null;
        }
    }

    private static ulong Bits(object number) => number is ulong big ? big : unchecked((ulong)Convert.ToInt64(number, System.Globalization.CultureInfo.InvariantCulture));
}
