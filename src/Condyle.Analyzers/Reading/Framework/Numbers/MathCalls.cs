namespace Condyle.Analyzers.Reading;

/// <summary>
/// <c>Math</c>, <c>MathF</c>, and the functions that the real types have themselves. The oldest hosts have no <c>MathF</c>, so its
/// functions are worked out as doubles and rounded: exact where they are (roots, parts, rounding), else right to the last digit, which
/// <c>MathF</c>'s own may miss by one. That lies within the rounding in which readings and runs are compared.
/// </summary>
internal static class MathCalls
{
    private const string Double = "System.Double.";
    private const string Single = "System.Single.";
    private static readonly string[] Doubles = ["System.Math.", Double];
    private static readonly string[] Singles = ["System.MathF.", Single];

    public static void Register()
    {
        foreach (var (name, run) in new (string, Func<double, double>)[]
        {
            ("Sin", Math.Sin), ("Cos", Math.Cos), ("Tan", Math.Tan), ("Asin", Math.Asin), ("Acos", Math.Acos), ("Atan", Math.Atan),
            ("Sinh", Math.Sinh), ("Cosh", Math.Cosh), ("Tanh", Math.Tanh), ("Asinh", RealMath.Asinh), ("Acosh", RealMath.Acosh), ("Atanh", RealMath.Atanh),
            ("Sqrt", Math.Sqrt), ("Cbrt", RealMath.Cbrt), ("Exp", Math.Exp), ("Exp2", value => Math.Pow(2, value)), ("Exp10", value => Math.Pow(10, value)),
            ("Log", Math.Log), ("Log2", RealMath.Log2), ("Log10", Math.Log10), ("Floor", Math.Floor), ("Ceiling", Math.Ceiling), ("Truncate", Math.Truncate),
            ("Round", Math.Round), ("Abs", Math.Abs),
            ("SinPi", value => Math.Sin(value * Math.PI)), ("CosPi", value => Math.Cos(value * Math.PI)), ("TanPi", value => Math.Tan(value * Math.PI)),
        })
        {
            Real(name, run);
        }

        foreach (var (name, run) in new (string, Func<double, double, double>)[]
        {
            ("Atan2", Math.Atan2), ("Pow", Math.Pow), ("Log", Math.Log), ("IEEERemainder", Math.IEEERemainder), ("Ieee754Remainder", Math.IEEERemainder),
            ("CopySign", RealMath.CopySign), ("Max", RealMath.Max), ("Min", RealMath.Min), ("MaxNumber", RealMath.MaxNumber), ("MinNumber", RealMath.MinNumber),
            ("MaxMagnitude", RealMath.MaxMagnitude), ("MinMagnitude", RealMath.MinMagnitude), ("MaxNative", RealMath.Max), ("MinNative", RealMath.Min), ("Hypot", RealMath.Hypot),
        })
        {
            Real(name, run);
        }

        Mixed();
        Rounding();
        Whole();
        Angles();
    }

    private static void Real(string name, Func<double, double> run)
    {
        foreach (var type in Doubles)
            Pure.Add(type + name, run);
        foreach (var type in Singles.Append("System.Math."))
            Pure.Add(type + name, (float value) => (float)run(value));
    }

    private static void Real(string name, Func<double, double, double> run)
    {
        foreach (var type in Doubles)
            Pure.Add(type + name, run);
        foreach (var type in Singles.Append("System.Math."))
            Pure.Add(type + name, (float a, float b) => (float)run(a, b));
    }

    private static void Mixed()
    {
        foreach (var type in Doubles)
        {
            Pure.Add(type + "Clamp", (double value, double least, double most) => RealMath.Clamp(value, least, most));
            Pure.Add(type + "FusedMultiplyAdd", (double x, double y, double z) => RealMath.MultiplyAdd(x, y, z));
            Pure.Add(type + "BitIncrement", (double value) => RealMath.Next(value, 1));
            Pure.Add(type + "BitDecrement", (double value) => RealMath.Next(value, -1));
            Pure.Add(type + "ScaleB", (double value, int exponent) => value * Math.Pow(2, exponent));
            Pure.Add(type + "ILogB", (double value) => value != 0 && RealMath.IsFinite(value) ? (int)Math.Floor(RealMath.Log2(Math.Abs(value))) : (int?)null);
            Pure.Add(type + "SinCos", (double angle) => (object)new TupleValue([Math.Sin(angle), Math.Cos(angle)]));
            Pure.Add(type + "Sign", (double value) => Math.Sign(value));
            Pure.Add(type + "Lerp", (double from, double to, double amount) => RealMath.Lerp(from, to, amount));
        }

        foreach (var type in Singles.Append("System.Math."))
        {
            Pure.Add(type + "Clamp", (float value, float least, float most) => (float)RealMath.Clamp(value, least, most));
            Pure.Add(type + "FusedMultiplyAdd", (float x, float y, float z) => (float)(((double)x * y) + z));
            Pure.Add(type + "BitIncrement", (float value) => RealMath.Next(value, 1));
            Pure.Add(type + "BitDecrement", (float value) => RealMath.Next(value, -1));
            Pure.Add(type + "ScaleB", (float value, int exponent) => (float)(value * Math.Pow(2, exponent)));
            Pure.Add(type + "ILogB", (float value) => value != 0 && RealMath.IsFinite(value) ? (int)Math.Floor(RealMath.Log2(Math.Abs(value))) : (int?)null);
            Pure.Add(type + "SinCos", (float angle) => (object)new TupleValue([(float)Math.Sin(angle), (float)Math.Cos(angle)]));
            Pure.Add(type + "Sign", (float value) => Math.Sign(value));
            Pure.Add(type + "Lerp", (float from, float to, float amount) => RealMath.Lerp(from, to, amount));
        }
    }

    private static void Rounding()
    {
        foreach (var type in Doubles)
        {
            Pure.Add(type + "Round", (double value, int digits) => RealMath.Round(value, digits, MidpointRounding.ToEven));
            Pure.Add(type + "Round", (double value, MidpointRounding how) => RealMath.Round(value, how));
            Pure.Add(type + "Round", (double value, int digits, MidpointRounding how) => RealMath.Round(value, digits, how));
        }

        foreach (var type in Singles)
        {
            Pure.Add(type + "Round", (float value, int digits) => RealMath.Round(value, digits, MidpointRounding.ToEven));
            Pure.Add(type + "Round", (float value, MidpointRounding how) => (float)RealMath.Round(value, how));
            Pure.Add(type + "Round", (float value, int digits, MidpointRounding how) => RealMath.Round(value, digits, how));
        }

        foreach (var type in new[] { "System.Math.", "System.Decimal." })
        {
            Pure.Add(type + "Round", (decimal value) => decimal.Round(value));
            Pure.Add(type + "Round", (decimal value, int digits) => decimal.Round(value, digits));
            Pure.Add(type + "Round", (decimal value, MidpointRounding how) => RealMath.Round(value, 0, how));
            Pure.Add(type + "Round", (decimal value, int digits, MidpointRounding how) => RealMath.Round(value, digits, how));
            Pure.Add(type + "Floor", (decimal value) => decimal.Floor(value));
            Pure.Add(type + "Ceiling", (decimal value) => decimal.Ceiling(value));
            Pure.Add(type + "Truncate", (decimal value) => decimal.Truncate(value));
        }
    }

    private static void Whole()
    {
        Pure.Add("System.Math.BigMul", (int a, int b) => (long)a * b);
        Pure.Add("System.Math.BigMul", (uint a, uint b) => (ulong)a * b);
    }

    private static void Angles()
    {
        Pure.Add(Double + "DegreesToRadians", (double degrees) => degrees * Math.PI / 180.0);
        Pure.Add(Double + "RadiansToDegrees", (double radians) => radians * 180.0 / Math.PI);
        Pure.Add(Single + "DegreesToRadians", (float degrees) => degrees * (float)Math.PI / 180f);
        Pure.Add(Single + "RadiansToDegrees", (float radians) => radians * 180f / (float)Math.PI);
    }
}
