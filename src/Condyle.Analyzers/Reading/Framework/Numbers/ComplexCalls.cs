using System.Numerics;

namespace Condyle.Analyzers.Reading;

/// <summary>Complex numbers.</summary>
internal static class ComplexCalls
{
    private const string Type = "System.Numerics.Complex.";

    public static void Register()
    {
        Pure.Add(Type + ".ctor", (double real, double imaginary) => new Complex(real, imaginary));
        Pure.Add(Type + "FromPolarCoordinates", (double magnitude, double phase) => Complex.FromPolarCoordinates(magnitude, phase));
        foreach (var (name, value) in new[] { ("Zero", Complex.Zero), ("One", Complex.One), ("ImaginaryOne", Complex.ImaginaryOne) })
            FrameworkTable.Add("System.Numerics.Complex", "get_" + name, _ => value);
        Of("get_Real", z => z.Real);
        Of("get_Imaginary", z => z.Imaginary);
        Of("get_Magnitude", z => z.Magnitude);
        Of("get_Phase", z => z.Phase);
        Of("Abs", Complex.Abs);
        Of("Conjugate", Complex.Conjugate);
        Of("Reciprocal", Complex.Reciprocal);
        Of("Exp", Complex.Exp);
        Of("Log", Complex.Log);
        Of("Sin", Complex.Sin);
        Of("Cos", Complex.Cos);
        Of("Sqrt", Complex.Sqrt);
        foreach (var name in new[] { "op_UnaryNegation", "Negate" })
            Of(name, z => -z);
        foreach (var name in new[] { "op_Addition", "Add" })
            Two(name, (a, b) => a + b);
        foreach (var name in new[] { "op_Subtraction", "Subtract" })
            Two(name, (a, b) => a - b);
        foreach (var name in new[] { "op_Multiply", "Multiply" })
            Two(name, (a, b) => a * b);
        foreach (var name in new[] { "op_Division", "Divide" })
            Two(name, (a, b) => a / b);
        Two("op_Equality", (a, b) => a == b);
        Two("op_Inequality", (a, b) => a != b);
        Two("Equals", (a, b) => a.Equals(b));
        Two("Pow", Complex.Pow);
        Of("op_Implicit", z => z);
    }

    private static void Of<TResult>(string name, Func<Complex, TResult> run)
    {
        Pure.Add(Type + name, run);
        Pure.Add(Type + name, (double real) => run(real));
        Pure.Add(Type + name, (float real) => run(real));
        Pure.Add(Type + name, (int real) => run(real));
    }

    private static void Two<TResult>(string name, Func<Complex, Complex, TResult> run)
    {
        Pure.Add(Type + name, run);
        Pure.Add(Type + name, (Complex a, double b) => run(a, b));
        Pure.Add(Type + name, (double a, Complex b) => run(a, b));
    }
}
