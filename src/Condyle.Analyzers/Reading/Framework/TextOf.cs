using System.Globalization;

namespace Condyle.Analyzers.Reading;

/// <summary>The text that C# makes of a value. Whole numbers are known; numbers with a point depend on the culture, so they are open.</summary>
internal static class TextOf
{
    public static TextValue Value(object? value, TypeKey? type, string? format, Machine machine)
    {
        switch (value)
        {
            case null: return TextValue.Plain("");
            case TextValue text: return format is null ? text : TextValue.Open;
            case Side side: return TextValue.Plain(side.ToString());
            case IHandle handle: return new TextValue(machine.Draft.NameOf(handle.Id), [], []);
            case ObjectValue own when machine.Program.ToStringOf(own.Type) is { } body:
                return machine.Call(body, own, []) as TextValue ?? TextValue.Open;
            case char character: return TextValue.Plain(character.ToString());
            case bool truth: return TextValue.Plain(truth ? "True" : "False");
        }

        if (type is { Shape: TypeShape.Nullable })
            type = type.Element;
        if (type is { Shape: TypeShape.Enum })
            return format is null && type.Members.FirstOrDefault(member => member.Value.Equals(value)).Key is { } name ? TextValue.Plain(name) : TextValue.Open;
        return value is sbyte or byte or short or ushort or int or uint or long or ulong && (format is null || format.StartsWith("D", StringComparison.OrdinalIgnoreCase))
            ? Number((IFormattable)value, format)
            : TextValue.Open;
    }

    private static TextValue Number(IFormattable number, string? format)
    {
        try
        {
            return TextValue.Plain(number.ToString(format, CultureInfo.InvariantCulture));
        }
        catch (FormatException)
        {
            return TextValue.Open;
        }
    }
}
