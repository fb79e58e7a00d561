namespace Condyle.Analyzers.Reading;

/// <summary><c>Math</c> and <c>MathF</c>.</summary>
internal static class MathCalls
{
    public static void Register()
    {
        One("Sin", Math.Sin);
        One("Cos", Math.Cos);
        One("Tan", Math.Tan);
        One("Asin", Math.Asin);
        One("Acos", Math.Acos);
        One("Atan", Math.Atan);
        One("Sqrt", Math.Sqrt);
        One("Floor", Math.Floor);
        One("Ceiling", Math.Ceiling);
        One("Exp", Math.Exp);
        One("Truncate", Math.Truncate);
        Two("Atan2", Math.Atan2);
        Two("Pow", Math.Pow);
        foreach (var type in new[] { "System.Math.", "System.MathF." })
        {
            FrameworkTable.Pure(type + "Abs", arguments => arguments[0] switch
            {
                int value => value == int.MinValue ? throw new ThrownByCode("System.OverflowException", "The least whole number has no absolute value.") : Math.Abs(value),
                float value => Math.Abs(value),
                double value => Math.Abs(value),
                long value when value != long.MinValue => Math.Abs(value),
                _ => null,
            });
            FrameworkTable.Pure(type + "Min", arguments => Pick(arguments, Math.Min, Math.Min, Math.Min));
            FrameworkTable.Pure(type + "Max", arguments => Pick(arguments, Math.Max, Math.Max, Math.Max));
            FrameworkTable.Pure(type + "Clamp", arguments => arguments switch
            {
                [int value, int least, int most] => Math.Max(least, Math.Min(most, value)),
                [float value, float least, float most] => Math.Max(least, Math.Min(most, value)),
                [double value, double least, double most] => Math.Max(least, Math.Min(most, value)),
                _ => null,
            });
            FrameworkTable.Pure(type + "Sign", arguments => arguments[0] switch
            {
                int value => Math.Sign(value),
                float value when !float.IsNaN(value) => Math.Sign(value),
                double value when !double.IsNaN(value) => Math.Sign(value),
                _ => null,
            });
            FrameworkTable.Pure(type + "Round", arguments => arguments switch
            {
                [float value] => (float)Math.Round(value),
                [double value] => Math.Round(value),
                _ => null,
            });
        }
    }

    private static void One(string name, Func<double, double> run)
    {
        FrameworkTable.Pure("System.Math." + name, arguments => arguments[0] is double value ? run(value) : null);
        FrameworkTable.Pure("System.MathF." + name, arguments => arguments[0] is float value ? (float)run(value) : null);
    }

    private static void Two(string name, Func<double, double, double> run)
    {
        FrameworkTable.Pure("System.Math." + name, arguments => arguments is [double a, double b] ? run(a, b) : null);
        FrameworkTable.Pure("System.MathF." + name, arguments => arguments is [float a, float b] ? (float)run(a, b) : null);
    }

    private static object? Pick(object?[] arguments, Func<int, int, int> whole, Func<float, float, float> single, Func<double, double, double> real) => arguments switch
    {
        [int a, int b] => whole(a, b),
        [float a, float b] => single(a, b),
        [double a, double b] => real(a, b),
        _ => null,
    };
}
