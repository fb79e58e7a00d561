using Microsoft.CodeAnalysis.Operations;

namespace Condyle.Analyzers.Reading;

/// <summary>What the type of decimal numbers has as methods where other number types have operators.</summary>
internal static class DecimalCalls
{
    private const string Type = "System.Decimal.";

    public static void Register()
    {
        foreach (var (name, kind) in new[]
        {
            ("Addition", BinaryOperatorKind.Add), ("Subtraction", BinaryOperatorKind.Subtract), ("Multiply", BinaryOperatorKind.Multiply), ("Division", BinaryOperatorKind.Divide), ("Modulus", BinaryOperatorKind.Remainder),
            ("Equality", BinaryOperatorKind.Equals), ("Inequality", BinaryOperatorKind.NotEquals), ("LessThan", BinaryOperatorKind.LessThan), ("LessThanOrEqual", BinaryOperatorKind.LessThanOrEqual),
            ("GreaterThan", BinaryOperatorKind.GreaterThan), ("GreaterThanOrEqual", BinaryOperatorKind.GreaterThanOrEqual),
        })
        {
            Operator("op_" + name, kind);
        }

        foreach (var (name, kind) in new[] { ("Add", BinaryOperatorKind.Add), ("Subtract", BinaryOperatorKind.Subtract), ("Multiply", BinaryOperatorKind.Multiply), ("Divide", BinaryOperatorKind.Divide), ("Remainder", BinaryOperatorKind.Remainder) })
            Operator(name, kind);
        Pure.Add(Type + "op_UnaryNegation", (decimal value) => -value);
        Pure.Add(Type + "Negate", (decimal value) => -value);
        Pure.Add(Type + "op_UnaryPlus", (decimal value) => value);
        Pure.Add(Type + "op_Increment", (decimal value) => value + 1);
        Pure.Add(Type + "op_Decrement", (decimal value) => value - 1);
        Pure.Add(Type + "Compare", (decimal a, decimal b) => a.CompareTo(b));
        Pure.Add(Type + "IsNegative", (decimal value) => value < 0);
        Pure.Add(Type + "IsPositive", (decimal value) => value >= 0);
        Pure.Add(Type + "IsEvenInteger", (decimal value) => value % 2 == 0);
        Pure.Add(Type + "IsOddInteger", (decimal value) => Math.Abs(value % 2) == 1);
        foreach (var name in new[] { "op_Implicit", "op_Explicit", "ToInt32", "ToInt64", "ToDouble", "ToSingle", "ToByte", "ToInt16", "ToUInt32", "ToUInt64" })
            FrameworkTable.Add("System.Decimal", name, new FrameworkMethod(Convert) { NeedsAll = true });
    }

    private static void Operator(string name, BinaryOperatorKind kind) =>
        FrameworkTable.Add("System.Decimal", name, new FrameworkMethod(call => Arithmetic.Binary(kind, call[0], call[1], isChecked: true)) { NeedsAll = true });

    private static object? Convert(Invocation call) => call[0] is { } value && call.Method.Returns is { } to ? NumberConversions.Convert(value, to.Shape, isChecked: true) : throw call.Unknown();
}
