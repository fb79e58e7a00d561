using System.Globalization;

namespace Condyle.Analyzers.Reading;

/// <summary>C#'s conversions between primitive types. A real number out of a whole type's range becomes the nearest end of it, as .NET has it since version 9.</summary>
internal static class NumberConversions
{
    /// <summary>A value of another primitive type; none when there is no such conversion.</summary>
    public static object? Convert(object value, TypeShape to, bool isChecked)
    {
        try
        {
            return value switch
            {
                char character => OfWhole(character, to, isChecked),
                float or double when to == TypeShape.Decimal => value is float single ? (decimal)single : (decimal)(double)value,
                float single => to == TypeShape.Single ? single : OfReal(single, to, isChecked),
                double real => OfReal(real, to, isChecked),
                decimal number => OfDecimal(number, to),
                ulong whole => OfUnsigned(whole, to, isChecked),
                sbyte or byte or short or ushort or int or uint or long => OfWhole(((IConvertible)value).ToInt64(CultureInfo.InvariantCulture), to, isChecked),
                _ => null,
            };
        }
        catch (OverflowException)
        {
            throw new ThrownByCode("System.OverflowException", "A conversion left the range of its type.");
        }
    }

    private static object? OfWhole(long value, TypeShape to, bool isChecked) => to switch
    {
        TypeShape.Char => (char)Fit(value, ushort.MinValue, ushort.MaxValue, isChecked),
        TypeShape.SByte => unchecked((sbyte)Fit(value, sbyte.MinValue, sbyte.MaxValue, isChecked)),
        TypeShape.Byte => unchecked((byte)Fit(value, byte.MinValue, byte.MaxValue, isChecked)),
        TypeShape.Int16 => unchecked((short)Fit(value, short.MinValue, short.MaxValue, isChecked)),
        TypeShape.UInt16 => unchecked((ushort)Fit(value, ushort.MinValue, ushort.MaxValue, isChecked)),
        TypeShape.Int32 => unchecked((int)Fit(value, int.MinValue, int.MaxValue, isChecked)),
        TypeShape.UInt32 => unchecked((uint)Fit(value, uint.MinValue, uint.MaxValue, isChecked)),
        TypeShape.Int64 => value,
        TypeShape.UInt64 => unchecked((ulong)Fit(value, 0, long.MaxValue, isChecked)),
        TypeShape.Single => (float)value,
        TypeShape.Double => (double)value,
        TypeShape.Decimal => (decimal)value,
        _ => null,
    };

    private static object? OfUnsigned(ulong value, TypeShape to, bool isChecked) => to switch
    {
        TypeShape.UInt64 => value,
        TypeShape.Single => (float)value,
        TypeShape.Double => (double)value,
        TypeShape.Decimal => (decimal)value,
        _ => isChecked && value > long.MaxValue ? throw new OverflowException() : OfWhole(unchecked((long)value), to, isChecked),
    };

    private static object? OfReal(double value, TypeShape to, bool isChecked)
    {
        switch (to)
        {
            case TypeShape.Single: return (float)value;
            case TypeShape.Double: return value;
        }

        var (least, greatest) = RangeOf(to);
        if (least > greatest)
            return null;
        var truncated = Math.Truncate(value);
        if (isChecked && !(truncated >= least && truncated <= greatest && truncated < 18446744073709551616.0 && (to != TypeShape.Int64 || truncated < 9223372036854775808.0)))
            throw new OverflowException();
        // Types smaller than 32 bits are reached by way of those.
        return to switch
        {
            TypeShape.UInt32 => (uint)Nearest(truncated, uint.MinValue, uint.MaxValue),
            TypeShape.Int64 => NearestLong(truncated),
            TypeShape.UInt64 => NearestUnsigned(truncated),
            _ => OfWhole((long)Nearest(truncated, int.MinValue, int.MaxValue), to, isChecked: false),
        };
    }

    private static object? OfDecimal(decimal value, TypeShape to) => to switch
    {
        TypeShape.Single => (float)value,
        TypeShape.Double => (double)value,
        TypeShape.Decimal => value,
        TypeShape.UInt64 => (ulong)value,
        TypeShape.Int64 => (long)value,
        _ => OfWhole((long)value, to, isChecked: true),
    };

    private static (double Least, double Greatest) RangeOf(TypeShape type) => type switch
    {
        TypeShape.Char or TypeShape.UInt16 => (ushort.MinValue, ushort.MaxValue),
        TypeShape.SByte => (sbyte.MinValue, sbyte.MaxValue),
        TypeShape.Byte => (byte.MinValue, byte.MaxValue),
        TypeShape.Int16 => (short.MinValue, short.MaxValue),
        TypeShape.Int32 => (int.MinValue, int.MaxValue),
        TypeShape.UInt32 => (uint.MinValue, uint.MaxValue),
        TypeShape.Int64 => (long.MinValue, long.MaxValue),
        TypeShape.UInt64 => (ulong.MinValue, ulong.MaxValue),
        _ => (1, 0),
    };

    private static double Nearest(double value, double least, double greatest) => double.IsNaN(value) ? 0 : Math.Max(least, Math.Min(greatest, value));

    private static long NearestLong(double value) => double.IsNaN(value) ? 0
        : value >= 9223372036854775808.0 ? long.MaxValue
        : value <= long.MinValue ? long.MinValue
        : (long)value;

    private static ulong NearestUnsigned(double value) => double.IsNaN(value) || value <= 0 ? 0
        : value >= 18446744073709551616.0 ? ulong.MaxValue
        : (ulong)value;

    private static long Fit(long value, long least, long greatest, bool isChecked) =>
        !isChecked || (value >= least && value <= greatest) ? value : throw new OverflowException();
}
