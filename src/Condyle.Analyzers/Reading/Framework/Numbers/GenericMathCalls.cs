namespace Condyle.Analyzers.Reading;

/// <summary>What the framework's interfaces for numbers offer to generic code: the type that stands in decides.</summary>
internal static class GenericMathCalls
{
    private static readonly IReadOnlyDictionary<string, string[]> Members = new Dictionary<string, string[]>
    {
        ["INumber"] = ["Max", "Min", "MaxNumber", "MinNumber", "Clamp", "Sign", "CopySign"],
        ["INumberBase"] = ["Abs", "IsNegative", "IsPositive", "IsNaN", "IsFinite", "IsInfinity", "IsInteger", "IsEvenInteger", "IsOddInteger", "MaxMagnitude", "MinMagnitude", "CreateChecked", "CreateTruncating", "CreateSaturating"],
        ["IRootFunctions"] = ["Sqrt", "Cbrt", "Hypot"],
        ["ITrigonometricFunctions"] = ["Sin", "Cos", "Tan", "Asin", "Acos", "Atan", "SinCos", "DegreesToRadians", "RadiansToDegrees"],
        ["IHyperbolicFunctions"] = ["Sinh", "Cosh", "Tanh", "Asinh", "Acosh", "Atanh"],
        ["IPowerFunctions"] = ["Pow"],
        ["IExponentialFunctions"] = ["Exp", "Exp2", "Exp10"],
        ["ILogarithmicFunctions"] = ["Log", "Log2", "Log10"],
        ["IFloatingPoint"] = ["Floor", "Ceiling", "Truncate", "Round"],
        ["IFloatingPointIeee754"] = ["Atan2", "Lerp", "FusedMultiplyAdd", "Ieee754Remainder"],
        ["IBinaryInteger"] = ["DivRem", "PopCount", "LeadingZeroCount", "TrailingZeroCount", "RotateLeft", "RotateRight"],
        ["IBinaryNumber"] = ["IsPow2", "Log2"],
    };

    private static readonly IReadOnlyDictionary<string, double> Constants = new Dictionary<string, double>
    {
        ["INumberBase.Zero"] = 0,
        ["INumberBase.One"] = 1,
        ["IAdditiveIdentity.AdditiveIdentity"] = 0,
        ["IMultiplicativeIdentity.MultiplicativeIdentity"] = 1,
        ["ISignedNumber.NegativeOne"] = -1,
        ["IFloatingPointConstants.Pi"] = Math.PI,
        ["IFloatingPointConstants.E"] = Math.E,
        ["IFloatingPointConstants.Tau"] = 2 * Math.PI,
    };

    public static void Register()
    {
        foreach (var constant in Constants)
        {
            var names = constant.Key.Split('.');
            FrameworkTable.Add("System.Numerics." + names[0], "get_" + names[1], call => NumberConversions.Convert(constant.Value, TypeOf(call).Shape, isChecked: false));
        }

        foreach (var pair in Members)
        {
            foreach (var name in pair.Value)
                FrameworkTable.Add("System.Numerics." + pair.Key, name, call => FrameworkTable.Find("System." + TypeOf(call).Name, name)?.Call(new Invocation(call.Machine, call.Method with { Returns = TypeOf(call) }, call.Arguments)) ?? OpenValue.Any);
        }
    }

    private static TypeKey TypeOf(Invocation call) => call.Method.On is { Shape: >= TypeShape.SByte and <= TypeShape.Decimal } type ? type : throw call.Unknown();
}
