using System.Globalization;
using System.Numerics;

namespace Condyle.Analyzers.Reading;

/// <summary>
/// The text that C# makes of a value. Whole numbers are known in every culture; what depends on the culture is known where the code asks
/// for the invariant one, else open.
/// </summary>
internal static class TextOf
{
    // Runtimes before .NET Core 3.0 write other digits than the program will.
    public static readonly bool HostWritesShortestNumbers = (1f / 3f).ToString(CultureInfo.InvariantCulture) == "0.33333334";

    public static TextValue Of(object? value, Machine machine, string? format = null, bool isInvariant = false)
    {
        using var level = Budget.Current.Deeper();
        return value switch
        {
            null => TextValue.Plain(""),
            TextValue text => text,
            bool truth => TextValue.Plain(truth ? "True" : "False"),
            char character => TextValue.Plain(character.ToString()),
            EnumValue own => OfEnum(own, format),
            Side side => TextValue.Plain(side.ToString()),
            IHandle handle => NameOf(handle, machine),
            ObjectValue own => OfObject(own, format, machine),
            TupleValue tuple => OfTuple(tuple, machine),
            FormattableValue text => text.Text(machine, isInvariant),
            BuilderValue builder => builder.Text,
            IndexValue or RangeValue => TextValue.Plain(value.ToString()),
            float or double or decimal => OfReal((IFormattable)value, format, isInvariant),
            sbyte or byte or short or ushort or int or uint or long or ulong => isInvariant || IsFreeOfCulture(format) ? Formatted((IFormattable)value, format) : TextValue.Open,
            TimeSpan time when string.IsNullOrEmpty(format) || format is "c" or "t" or "T" => TextValue.Plain(time.ToString("c", CultureInfo.InvariantCulture)),
            BigInteger number when string.IsNullOrEmpty(format) => TextValue.Plain(number.ToString(CultureInfo.InvariantCulture)),
            WideValue wide when string.IsNullOrEmpty(format) => TextValue.Plain(wide.Number.ToString(CultureInfo.InvariantCulture)),
            Guid id => Formatted(id, format),
            Version version when string.IsNullOrEmpty(format) => TextValue.Plain(version.ToString()),
            DateTime or DateTimeOffset or DayValue or ClockValue => OfMoment(value, format, isInvariant, machine),
            Vector2 or Vector3 or Vector4 when isInvariant => OfVector((IFormattable)value, format),
            _ => TextValue.Open,
        };
    }

    /// <summary>The text in a field of a width: to the right where it is positive, else to the left.</summary>
    public static TextValue Aligned(TextValue text, int width)
    {
        if (width == 0)
            return text;
        if (!text.TryKnown(out var known))
            return TextValue.Open;
        TextValue.CheckLength(Math.Abs((long)width));
        var missing = Math.Abs(width) - known.Length;
        if (missing <= 0)
            return text;
        var gap = TextValue.Plain(new string(' ', missing));
        return TextValue.Join(width > 0 ? [gap, text] : [text, gap], null);
    }

    private static TextValue NameOf(IHandle handle, Machine machine)
    {
        var name = Handles.DraftOf(handle).NameOf(handle.Id);
        return machine.Calls.NameOf(handle.Id, name);
    }

    private static TextValue OfEnum(EnumValue value, string? format)
    {
        switch (format)
        {
            case "D" or "d": return TextValue.Plain(((IFormattable)value.Number).ToString(null, CultureInfo.InvariantCulture));
            case not (null or "" or "G" or "g"): return TextValue.Open;
        }

        // Of several names of one value, which is taken isn't said.
        var named = value.Type.Members.Where(member => member.Value.Equals(value.Number)).ToList();
        return named.Count == 1 ? TextValue.Plain(named[0].Key)
            : named.Count > 1 ? TextValue.Open
            : value.Type.IsFlags ? OfFlags(value)
            : TextValue.Plain(((IFormattable)value.Number).ToString(null, CultureInfo.InvariantCulture));
    }

    private static TextValue OfFlags(EnumValue value)
    {
        var (rest, names) = (Bits(value.Number), new List<string>());
        foreach (var same in value.Type.Members.GroupBy(member => Bits(member.Value), member => member.Key).Where(same => same.Key != 0).OrderByDescending(same => same.Key))
        {
            if ((rest & same.Key) != same.Key)
                continue;
            if (same.Count() > 1)
                return TextValue.Open;
            rest &= ~same.Key;
            names.Insert(0, same.First());
        }

        return TextValue.Plain(rest == 0 && names.Count > 0 ? string.Join(", ", names) : ((IFormattable)value.Number).ToString(null, CultureInfo.InvariantCulture));
    }

    private static ulong Bits(object number) => number switch
    {
        sbyte bits => (byte)bits,
        short bits => (ushort)bits,
        int bits => (uint)bits,
        long bits => (ulong)bits,
        _ => Convert.ToUInt64(number, CultureInfo.InvariantCulture),
    };

    private static TextValue OfObject(ObjectValue own, string? format, Machine machine)
    {
        if (machine.Program.FormatterOf(own.Type) is { } formatter)
            return machine.Call(formatter, own, [format is null ? null : TextValue.Plain(format), OpenValue.Any]) as TextValue ?? TextValue.Open;
        if (machine.Program.ToStringOf(own.Type) is { } body)
            return machine.Call(body, own, []) as TextValue ?? TextValue.Open;
        if (machine.Program.PrintsItself(own.Type))
            return TextValue.Open;
        if (machine.Program.PrintedMembersOf(own.Type) is not { } members)
            return machine.Program.FullNameOf(own.Type) is { } name ? TextValue.Plain(name) : TextValue.Open;
        List<TextValue> parts = [TextValue.Plain(own.Type.Id.StartsWith("anonymous ", StringComparison.Ordinal) ? "{ " : own.Type.Name + " { ")];
        for (var i = 0; i < members.Count; i++)
        {
            parts.Add(TextValue.Plain((i > 0 ? ", " : "") + members[i].Name + " = "));
            var value = members[i].Getter is { } getter ? machine.Call(getter, own, []) : Fields.CellOf(own, members[i].Field) is { } cell ? cell.Items[cell.Index] : OpenValue.Any;
            parts.Add(Of(value, machine));
        }

        parts.Add(TextValue.Plain(members.Count > 0 ? " }" : "}"));
        return TextValue.Join(parts, null);
    }

    private static TextValue OfTuple(TupleValue tuple, Machine machine)
    {
        List<TextValue> parts = [TextValue.Plain(tuple.IsPair ? "[" : "(")];
        for (var i = 0; i < tuple.Items.Length; i++)
        {
            if (i > 0)
                parts.Add(TextValue.Plain(", "));
            parts.Add(Of(tuple.Items[i], machine));
        }

        parts.Add(TextValue.Plain(tuple.IsPair ? "]" : ")"));
        return TextValue.Join(parts, null);
    }

    // As the value's own method writes it.
    private static TextValue OfMoment(object moment, string? format, bool isInvariant, Machine machine)
    {
        object? culture = isInvariant ? OtherCalls.InvariantCulture : OpenValue.Any;
        var type = FrameworkTypes.NameOf(moment)!;
        var method = new MethodRef(type + ".ToString", type, "ToString");
        return FrameworkTable.Find(type, "ToString")!.Call(new Invocation(machine, method, [moment, TextValue.Plain(format ?? ""), culture])) as TextValue ?? TextValue.Open;
    }

    // Hosts may write vectors otherwise, so their components are put together here.
    private static TextValue OfVector(IFormattable vector, string? format)
    {
        float[] components = vector switch
        {
            Vector2 two => [two.X, two.Y],
            Vector3 three => [three.X, three.Y, three.Z],
            Vector4 four => [four.X, four.Y, four.Z, four.W],
            _ => [],
        };
        List<TextValue> parts = [TextValue.Plain("<")];
        for (var i = 0; i < components.Length; i++)
        {
            if (i > 0)
                parts.Add(TextValue.Plain(", "));
            parts.Add(OfReal(components[i], format, isInvariant: true));
        }

        return TextValue.Join([.. parts, TextValue.Plain(">")], null);
    }

    // A real number that is whole is written without a point, alike in every culture.
    private static TextValue OfReal(IFormattable number, string? format, bool isInvariant)
    {
        if (!HostWritesShortestNumbers)
            return TextValue.Open;
        if (isInvariant || (format is not null && IsFreeOfCulture(format)))
            return Formatted(number, format);
        var text = number.ToString(null, CultureInfo.InvariantCulture);
        return format is null or "" && text.All(character => character is >= '0' and <= '9') ? TextValue.Plain(text) : TextValue.Open;
    }

    private static bool IsFreeOfCulture(string? format) => string.IsNullOrEmpty(format) || format is "G" or "g"
        || (format![0] is 'D' or 'd' or 'X' or 'x' or 'B' or 'b' && format.Skip(1).All(char.IsDigit))
        || format.All(character => character is '0' or '#')
        || format is "F0" or "f0";

    private static TextValue Formatted(IFormattable number, string? format)
    {
        // The digits that are asked for are made, however many: D99999.
        if (format?.Length > 1 && long.TryParse(format.Substring(1), NumberStyles.None, CultureInfo.InvariantCulture, out var digits))
            TextValue.CheckLength(digits);
        try
        {
            return TextValue.Plain(number.ToString(format, CultureInfo.InvariantCulture));
        }
        catch (FormatException refused)
        {
            throw new ThrownByCode("System.FormatException", refused.Message);
        }
    }
}
