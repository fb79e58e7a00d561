using System.Globalization;
using Microsoft.CodeAnalysis.Operations;

namespace Condyle.Analyzers.Reading;

/// <summary>C#'s arithmetic on primitive values. An operation that can't be done on known values throws as C# does.</summary>
internal static class Arithmetic
{
    /// <summary>A whole number, or an index from the end of a length; none when it isn't known.</summary>
    public static int? AsIndex(object? value, int length = 0) => value switch
    {
        int index => index,
        IndexValue fromEnd => fromEnd.Of(length),
        char or byte or sbyte or short or ushort => Convert.ToInt32(value, CultureInfo.InvariantCulture),
        uint or long or ulong => value is long and (< int.MinValue or > int.MaxValue) or uint and > int.MaxValue or ulong and > int.MaxValue
            ? int.MaxValue
            : Convert.ToInt32(value, CultureInfo.InvariantCulture),
        _ => null,
    };

    public static object? Binary(BinaryOperatorKind kind, object? left, object? right, bool isChecked)
    {
        switch (kind)
        {
            case BinaryOperatorKind.Equals or BinaryOperatorKind.NotEquals:
                if (left is null || right is null)
                {
                    if ((left ?? right) is OpenValue or TextValue { MayBeNull: true })
                        return null;
                    return (left is null && right is null) == (kind == BinaryOperatorKind.Equals);
                }

                // Not a number equals nothing, not even itself; as a key it does.
                var isEqual = (left, right) switch
                {
                    (float a, float b) => a == b,
                    (double a, double b) => a == b,
                    _ => KnownEquality.IsKnown(left) && KnownEquality.IsKnown(right) ? KnownEquality.Instance.Equals(left, right) : (bool?)null,
                };
                return isEqual is null ? null : isEqual == (kind == BinaryOperatorKind.Equals);
            case BinaryOperatorKind.ConditionalAnd or BinaryOperatorKind.And when left is bool a && right is bool b: return a & b;
            case BinaryOperatorKind.ConditionalOr or BinaryOperatorKind.Or when left is bool a && right is bool b: return a | b;
            case BinaryOperatorKind.ExclusiveOr when left is bool a && right is bool b: return a ^ b;
        }

        if (left is null || right is null || left is OpenValue || right is OpenValue)
            return null;
        if (kind is BinaryOperatorKind.LeftShift or BinaryOperatorKind.RightShift or BinaryOperatorKind.UnsignedRightShift)
            return Shift(kind, left, AsIndex(right) ?? 0);
        try
        {
            return (left, right) switch
            {
                (int a, int b) => OnInt(kind, a, b, isChecked),
                (long a, long b) => OnLong(kind, a, b, isChecked),
                (uint a, uint b) => OnUnsigned(kind, a, b, isChecked) is { } wide ? wide is ulong value ? isChecked ? checked((uint)value) : unchecked((uint)value) : wide : null,
                (ulong a, ulong b) => OnUnsigned(kind, a, b, isChecked),
                (float a, float b) => OnFloat(kind, a, b),
                (double a, double b) => OnDouble(kind, a, b),
                (decimal a, decimal b) => OnDecimal(kind, a, b),
                (IConvertible a, IConvertible b) when IsSmall(a) && IsSmall(b) =>
                    OnInt(kind, Convert.ToInt32(a, CultureInfo.InvariantCulture), Convert.ToInt32(b, CultureInfo.InvariantCulture), isChecked),
                _ => null,
            };
        }
        catch (DivideByZeroException)
        {
            throw new ThrownByCode("System.DivideByZeroException", "A whole number was divided by zero.");
        }
        catch (OverflowException)
        {
            throw new ThrownByCode("System.OverflowException", "A checked calculation left the range of its type.");
        }
    }

    public static object? Unary(UnaryOperatorKind kind, object? operand, bool isChecked)
    {
        try
        {
            return (kind, operand) switch
            {
                (UnaryOperatorKind.Not, bool value) => !value,
                (UnaryOperatorKind.Not, OpenValue open) => Not(open),
                (UnaryOperatorKind.Plus, not OpenValue) => operand,
                (UnaryOperatorKind.Minus, int value) => isChecked ? checked(-value) : unchecked(-value),
                (UnaryOperatorKind.Minus, long value) => isChecked ? checked(-value) : unchecked(-value),
                (UnaryOperatorKind.Minus, float value) => -value,
                (UnaryOperatorKind.Minus, double value) => -value,
                (UnaryOperatorKind.Minus, decimal value) => -value,
                (UnaryOperatorKind.BitwiseNegation, int value) => ~value,
                (UnaryOperatorKind.BitwiseNegation, sbyte or byte or short or ushort) => ~((IConvertible)operand!).ToInt32(CultureInfo.InvariantCulture),
                (UnaryOperatorKind.BitwiseNegation, long value) => ~value,
                (UnaryOperatorKind.BitwiseNegation, uint value) => ~value,
                (UnaryOperatorKind.BitwiseNegation, ulong value) => ~value,
                _ => null,
            };
        }
        catch (OverflowException)
        {
            throw new ThrownByCode("System.OverflowException", "A checked calculation left the range of its type.");
        }
    }

    /// <summary>The negation of an unknown truth.</summary>
    public static OpenValue Not(OpenValue open) => open.NegationOf ?? new OpenValue(open.Type) { NegationOf = open };

    private static bool IsSmall(IConvertible value) => value is char or byte or sbyte or short or ushort or int;

    private static object? Shift(BinaryOperatorKind kind, object left, int by) => (kind, left) switch
    {
        (BinaryOperatorKind.LeftShift, int value) => value << by,
        (BinaryOperatorKind.LeftShift, long value) => value << by,
        (BinaryOperatorKind.LeftShift, uint value) => value << by,
        (BinaryOperatorKind.LeftShift, ulong value) => value << by,
        (BinaryOperatorKind.RightShift, int value) => value >> by,
        (BinaryOperatorKind.RightShift, long value) => value >> by,
        (BinaryOperatorKind.RightShift, uint value) => value >> by,
        (BinaryOperatorKind.RightShift, ulong value) => value >> by,
        (BinaryOperatorKind.UnsignedRightShift, int value) => value >>> by,
        (BinaryOperatorKind.UnsignedRightShift, long value) => value >>> by,
        (BinaryOperatorKind.UnsignedRightShift, uint value) => value >>> by,
        (BinaryOperatorKind.UnsignedRightShift, ulong value) => value >>> by,
        _ => null,
    };

    private static object? OnInt(BinaryOperatorKind kind, int a, int b, bool isChecked) => kind switch
    {
        BinaryOperatorKind.Add => isChecked ? checked(a + b) : unchecked(a + b),
        BinaryOperatorKind.Subtract => isChecked ? checked(a - b) : unchecked(a - b),
        BinaryOperatorKind.Multiply => isChecked ? checked(a * b) : unchecked(a * b),
        BinaryOperatorKind.Divide => a / b,
        BinaryOperatorKind.Remainder => a % b,
        BinaryOperatorKind.And => a & b,
        BinaryOperatorKind.Or => a | b,
        BinaryOperatorKind.ExclusiveOr => a ^ b,
        _ => Compare(kind, a.CompareTo(b)),
    };

    private static object? OnLong(BinaryOperatorKind kind, long a, long b, bool isChecked) => kind switch
    {
        BinaryOperatorKind.Add => isChecked ? checked(a + b) : unchecked(a + b),
        BinaryOperatorKind.Subtract => isChecked ? checked(a - b) : unchecked(a - b),
        BinaryOperatorKind.Multiply => isChecked ? checked(a * b) : unchecked(a * b),
        BinaryOperatorKind.Divide => a / b,
        BinaryOperatorKind.Remainder => a % b,
        BinaryOperatorKind.And => a & b,
        BinaryOperatorKind.Or => a | b,
        BinaryOperatorKind.ExclusiveOr => a ^ b,
        _ => Compare(kind, a.CompareTo(b)),
    };

    private static object? OnUnsigned(BinaryOperatorKind kind, ulong a, ulong b, bool isChecked) => kind switch
    {
        BinaryOperatorKind.Add => isChecked ? checked(a + b) : unchecked(a + b),
        BinaryOperatorKind.Subtract => isChecked ? checked(a - b) : unchecked(a - b),
        BinaryOperatorKind.Multiply => isChecked ? checked(a * b) : unchecked(a * b),
        BinaryOperatorKind.Divide => a / b,
        BinaryOperatorKind.Remainder => a % b,
        BinaryOperatorKind.And => a & b,
        BinaryOperatorKind.Or => a | b,
        BinaryOperatorKind.ExclusiveOr => a ^ b,
        _ => Compare(kind, a.CompareTo(b)),
    };

    private static object? OnFloat(BinaryOperatorKind kind, float a, float b) => kind switch
    {
        BinaryOperatorKind.Add => a + b,
        BinaryOperatorKind.Subtract => a - b,
        BinaryOperatorKind.Multiply => a * b,
        BinaryOperatorKind.Divide => a / b,
        BinaryOperatorKind.Remainder => a % b,
        _ => OnDouble(kind, a, b),
    };

    private static object? OnDouble(BinaryOperatorKind kind, double a, double b) => kind switch
    {
        BinaryOperatorKind.Add => a + b,
        BinaryOperatorKind.Subtract => a - b,
        BinaryOperatorKind.Multiply => a * b,
        BinaryOperatorKind.Divide => a / b,
        BinaryOperatorKind.Remainder => a % b,
        BinaryOperatorKind.LessThan => a < b,
        BinaryOperatorKind.LessThanOrEqual => a <= b,
        BinaryOperatorKind.GreaterThan => a > b,
        BinaryOperatorKind.GreaterThanOrEqual => a >= b,
        _ => null,
    };

    private static object? OnDecimal(BinaryOperatorKind kind, decimal a, decimal b) => kind switch
    {
        BinaryOperatorKind.Add => a + b,
        BinaryOperatorKind.Subtract => a - b,
        BinaryOperatorKind.Multiply => a * b,
        BinaryOperatorKind.Divide => a / b,
        BinaryOperatorKind.Remainder => a % b,
        _ => Compare(kind, a.CompareTo(b)),
    };

    private static object? Compare(BinaryOperatorKind kind, int order) => kind switch
    {
        BinaryOperatorKind.LessThan => order < 0,
        BinaryOperatorKind.LessThanOrEqual => order <= 0,
        BinaryOperatorKind.GreaterThan => order > 0,
        BinaryOperatorKind.GreaterThanOrEqual => order >= 0,
        _ => null,
    };
}

/// <summary>An <c>Index</c>.</summary>
internal sealed record IndexValue(int Value, bool FromEnd)
{
    public int Of(int length) => FromEnd ? length - Value : Value;

    public override string ToString() => (FromEnd ? "^" : "") + Value.ToString(System.Globalization.CultureInfo.InvariantCulture);
}

/// <summary>A <c>Range</c>.</summary>
internal sealed record RangeValue(IndexValue Start, IndexValue End)
{
    public override string ToString() => $"{Start}..{End}";
}
