namespace Condyle.Analyzers.Reading;

/// <summary>Functions of real numbers that the oldest hosts don't have, as the framework has them.</summary>
internal static class RealMath
{
    /// <summary>The largest value of a double below which it can have digits behind the point.</summary>
    private const double RoundLimit = 1e16;
    private const float SingleRoundLimit = 1e8f;

    public static double Max(double a, double b) => a > b || double.IsNaN(a) ? a : a == b && !IsNegative(a) ? a : b;

    public static double Min(double a, double b) => a < b || double.IsNaN(a) ? a : a == b && IsNegative(a) ? a : b;

    public static double MaxNumber(double a, double b) => double.IsNaN(a) ? b : double.IsNaN(b) ? a : Max(a, b);

    public static double MinNumber(double a, double b) => double.IsNaN(a) ? b : double.IsNaN(b) ? a : Min(a, b);

    public static double MaxMagnitude(double a, double b) => Magnitude(a, b, Math.Abs(a) > Math.Abs(b), !IsNegative(a));

    public static double MinMagnitude(double a, double b) => Magnitude(a, b, Math.Abs(a) < Math.Abs(b), IsNegative(a));

    public static bool IsNegative(double value) => BitConverter.DoubleToInt64Bits(value) < 0;

    public static bool IsInteger(double value) => IsFinite(value) && value == Math.Truncate(value);

    public static bool IsFinite(double value) => !double.IsNaN(value) && !double.IsInfinity(value);

    public static double CopySign(double size, double sign) => IsNegative(size) == IsNegative(sign) ? size : -size;

    public static double Clamp(double value, double least, double most) => least > most
        ? throw new ArgumentException("The least value is greater than the greatest one.")
        : value < least ? least : value > most ? most : value;

    public static double Round(double value, MidpointRounding how) => (int)how switch
    {
        0 => Math.Round(value),
        1 => Math.Abs(value - Math.Truncate(value)) >= 0.5 ? Math.Truncate(value) + Math.Sign(value) : Math.Truncate(value),
        2 => Math.Truncate(value),
        3 => Math.Floor(value),
        4 => Math.Ceiling(value),
        _ => throw new ArgumentException("There is no such way to round."),
    };

    public static double Round(double value, int digits, MidpointRounding how)
    {
        if (digits is < 0 or > 15)
            throw new ArgumentOutOfRangeException(nameof(digits));
        var power = Math.Pow(10, digits);
        return Math.Abs(value) < RoundLimit ? Round(value * power, how) / power : value;
    }

    public static float Round(float value, int digits, MidpointRounding how)
    {
        if (digits is < 0 or > 6)
            throw new ArgumentOutOfRangeException(nameof(digits));
        var power = (float)Math.Pow(10, digits);
        var scaled = value * power;
        return Math.Abs(value) < SingleRoundLimit ? (float)Round(scaled, how) / power : value;
    }

    public static decimal Round(decimal value, int digits, MidpointRounding how)
    {
        var nearest = decimal.Round(value, digits, how is MidpointRounding.AwayFromZero ? how : MidpointRounding.ToEven);
        var step = new decimal(1, 0, 0, false, (byte)digits);
        return (int)how switch
        {
            0 or 1 => nearest,
            2 => Math.Abs(nearest) > Math.Abs(value) ? nearest - (step * Math.Sign(value)) : nearest,
            3 => nearest > value ? nearest - step : nearest,
            4 => nearest < value ? nearest + step : nearest,
            _ => throw new ArgumentException("There is no such way to round."),
        };
    }

    public static double Cbrt(double value)
    {
        if (value == 0 || !IsFinite(value))
            return value;
        var root = CopySign(Math.Pow(Math.Abs(value), 1.0 / 3), value);
        root -= ((root * root * root) - value) / (3 * root * root);
        var whole = Math.Round(root);
        return whole * whole * whole == value ? whole : root;
    }

    public static double Log2(double value)
    {
        var log = Math.Log(value) / Math.Log(2);
        return IsFinite(log) && Math.Pow(2, Math.Round(log)) == value ? Math.Round(log) : log;
    }

    public static double Asinh(double value) => value == 0 || !IsFinite(value) ? value : CopySign(Math.Log(Math.Abs(value) + Math.Sqrt((value * value) + 1)), value);

    public static double Acosh(double value) => Math.Log(value + Math.Sqrt((value * value) - 1));

    public static double Atanh(double value) => value == 0 ? value : 0.5 * Math.Log((1 + value) / (1 - value));

    public static double Hypot(double x, double y)
    {
        if (double.IsInfinity(x) || double.IsInfinity(y))
            return double.PositiveInfinity;
        var (large, small) = (Math.Max(Math.Abs(x), Math.Abs(y)), Math.Min(Math.Abs(x), Math.Abs(y)));
        return large == 0 ? 0 : large * Math.Sqrt(1 + (small / large * (small / large)));
    }

    public static double Lerp(double from, double to, double amount) => (from * (1 - amount)) + (to * amount);

    public static float Lerp(float from, float to, float amount) => (from * (1f - amount)) + (to * amount);

    /// <summary>A product and a sum, rounded once: what the two roundings would lose is added at the end.</summary>
    public static double MultiplyAdd(double x, double y, double z)
    {
        var product = x * y;
        var sum = product + z;
        if (!IsFinite(sum) || Math.Abs(x) > 1e150 || Math.Abs(y) > 1e150)
            return sum;
        var (highX, lowX) = Split(x);
        var (highY, lowY) = Split(y);
        var lostByProduct = (((highX * highY) - product) + (highX * lowY) + (lowX * highY)) + (lowX * lowY);
        var part = sum - product;
        var lostBySum = (product - (sum - part)) + (z - part);
        return sum + (lostByProduct + lostBySum);
    }

    public static double Next(double value, int direction)
    {
        if (double.IsNaN(value) || (double.IsInfinity(value) && Math.Sign(value) == direction))
            return value;
        if (value == 0)
            return direction * double.Epsilon;
        var bits = BitConverter.DoubleToInt64Bits(value);
        return BitConverter.Int64BitsToDouble(value > 0 == direction > 0 ? bits + 1 : bits - 1);
    }

    public static float Next(float value, int direction)
    {
        if (float.IsNaN(value) || (float.IsInfinity(value) && Math.Sign(value) == direction))
            return value;
        if (value == 0)
            return direction * float.Epsilon;
        var bits = BitConverter.ToInt32(BitConverter.GetBytes(value), 0);
        return BitConverter.ToSingle(BitConverter.GetBytes(value > 0 == direction > 0 ? bits + 1 : bits - 1), 0);
    }

    private static double Magnitude(double a, double b, bool takesFirst, bool firstOfSame) =>
        takesFirst || double.IsNaN(a) ? a : Math.Abs(a) == Math.Abs(b) && firstOfSame ? a : b;

    // Into two halves whose products are exact (Dekker 1971).
    private static (double High, double Low) Split(double value)
    {
        var scaled = value * 134217729;
        var high = scaled - (scaled - value);
        return (high, value - high);
    }
}
