namespace Condyle.Analyzers.Reading;

/// <summary>What the framework's interfaces for numbers offer to generic code: the type that stands in decides.</summary>
internal static class GenericMathCalls
{
    private const string Space = "System.Numerics.";

    public static void Register()
    {
        FrameworkTable.Overloaded(Space + "INumberBase.get_Zero", (_, _, method) => Number(0, method));
        FrameworkTable.Overloaded(Space + "INumberBase.get_One", (_, _, method) => Number(1, method));
        FrameworkTable.Overloaded(Space + "IAdditiveIdentity.get_AdditiveIdentity", (_, _, method) => Number(0, method));
        FrameworkTable.Overloaded(Space + "IMultiplicativeIdentity.get_MultiplicativeIdentity", (_, _, method) => Number(1, method));
        FrameworkTable.Overloaded(Space + "INumberBase.CreateChecked", (_, arguments, method) => Number(arguments[0], method, isChecked: true));
        FrameworkTable.Overloaded(Space + "INumberBase.CreateTruncating", (_, arguments, method) => Number(arguments[0], method));
        foreach (var name in new[] { "INumber.Max", "INumber.Min", "INumber.Clamp", "INumber.Sign", "INumberBase.Abs" })
            FrameworkTable.Overloaded(Space + name, (machine, arguments, _) => AsMath(machine, name.Substring(name.IndexOf('.') + 1), arguments));
        foreach (var name in new[] { "IRootFunctions.Sqrt", "ITrigonometricFunctions.Sin", "ITrigonometricFunctions.Cos", "ITrigonometricFunctions.Tan", "IPowerFunctions.Pow" })
            FrameworkTable.Overloaded(Space + name, (machine, arguments, _) => AsMath(machine, name.Substring(name.IndexOf('.') + 1), arguments));
    }

    private static object? Number(object? value, MethodRef method, bool isChecked = false) =>
        value is IConvertible && method.On is { } type ? NumberConversions.Convert(value, type.Shape, isChecked) : null;

    private static object? AsMath(Machine machine, string name, object?[] arguments)
    {
        var type = arguments[0] is float ? "System.MathF" : "System.Math";
        return FrameworkTable.Find(new MethodRef(name, type, name)) is { } known && arguments.All(KnownEquality.IsKnown) ? known.Run(machine, arguments, new MethodRef(name, type, name)) : null;
    }
}
