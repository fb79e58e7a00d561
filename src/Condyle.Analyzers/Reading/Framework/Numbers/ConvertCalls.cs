using System.Globalization;

namespace Condyle.Analyzers.Reading;

/// <summary><c>Convert</c>: between numbers, truth values, characters and texts.</summary>
internal static class ConvertCalls
{
    private const string Type = "System.Convert";

    public static void Register()
    {
        foreach (var (name, to) in new (string, Type)[]
        {
            ("SByte", typeof(sbyte)), ("Byte", typeof(byte)), ("Int16", typeof(short)), ("UInt16", typeof(ushort)), ("Int32", typeof(int)), ("UInt32", typeof(uint)),
            ("Int64", typeof(long)), ("UInt64", typeof(ulong)), ("Single", typeof(float)), ("Double", typeof(double)), ("Decimal", typeof(decimal)), ("Boolean", typeof(bool)), ("Char", typeof(char)),
        })
        {
            FrameworkTable.Add(Type, "To" + name, new FrameworkMethod(call => To(call, name, to)) { NeedsAll = true });
        }

        FrameworkTable.Add(Type, "ToString", call => call.Count == 2 && call[1] is int radix
            ? call[0] is OpenValue ? throw call.Unknown() : TextValue.Plain(InRadix(call[0]!, radix))
            : call[0] is null && call.Parameter(0)?.Shape == TypeShape.String ? null
            : TextOf.Of(call[0], call.Machine, null, call.Arguments.Contains(OtherCalls.InvariantCulture)));
    }

    private static object? To(Invocation call, string name, Type to)
    {
        try
        {
            return EnumValue.NumberOf(call[0]) switch
            {
                null => Convert.ChangeType(0, to, CultureInfo.InvariantCulture),
                TextValue text when call.Count == 2 && call[1] is int radix => FromRadix(Known(text), radix, to) ?? throw call.Unknown(),
                TextValue text when name == "Char" => Known(text).Length == 1 ? Known(text)[0] : throw new FormatException(),
                TextValue text => Parsing.Parse(name, call, Known(text)),
                IConvertible value => Convert.ChangeType(value, to, CultureInfo.InvariantCulture),
                _ => throw call.Unknown(),
            };
        }
        catch (Exception refused) when (refused is FormatException or OverflowException or ArgumentException or InvalidCastException)
        {
            throw new ThrownByCode(refused.GetType().FullName!, refused.Message);
        }
    }

    private static string Known(TextValue text) => text.ToString();

    private static string InRadix(object number, int radix) => number switch
    {
        byte value => Convert.ToString(value, radix),
        short value => Convert.ToString(value, radix),
        int value => Convert.ToString(value, radix),
        _ => Convert.ToString(Convert.ToInt64(number, CultureInfo.InvariantCulture), radix),
    };

    private static object? FromRadix(string text, int radix, Type to) => to == typeof(int) ? Convert.ToInt32(text, radix)
        : to == typeof(long) ? Convert.ToInt64(text, radix)
        : to == typeof(byte) ? Convert.ToByte(text, radix)
        : to == typeof(short) ? Convert.ToInt16(text, radix)
        : to == typeof(uint) ? Convert.ToUInt32(text, radix)
        : null;
}
