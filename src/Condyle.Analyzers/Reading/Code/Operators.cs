using Microsoft.CodeAnalysis.Operations;

namespace Condyle.Analyzers.Reading;

/// <summary>A built-in operator on the two values on the stack.</summary>
internal sealed class BinaryOperator(BinaryOperatorKind kind, bool isChecked, TypeKey result) : Instruction
{
    public override void Run(Machine machine, Frame frame)
    {
        var right = machine.Decide(frame.Pop());
        var left = machine.Decide(frame.Pop());
        machine.Calls.Observe(left);
        machine.Calls.Observe(right);
        frame.Push(Arithmetic.Binary(kind, left, right, isChecked) ?? Opens.Of(result, machine));
    }
}

internal sealed class UnaryOperator(UnaryOperatorKind kind, bool isChecked, TypeKey result) : Instruction
{
    public override void Run(Machine machine, Frame frame) =>
        frame.Push(Arithmetic.Unary(kind, frame.Pop(), isChecked) ?? Opens.Of(result, machine));
}

/// <summary>Converts the value on the stack to another primitive type.</summary>
internal sealed class ConvertNumber(TypeKey to, bool isChecked) : Instruction
{
    public override void Run(Machine machine, Frame frame)
    {
        var value = frame.Pop();
        var shape = to.Shape switch { TypeShape.Enum or TypeShape.Nullable => to.Element?.Shape ?? TypeShape.Other, var own => own };
        frame.Push(value switch
        {
            null => null,
            OpenValue open => open.CanFork ? open : new OpenValue(to),
            IConvertible when shape == TypeShape.Enum && to.Element?.Element is { } deep => Arithmetic.ConvertTo(value, deep.Shape, isChecked) ?? new OpenValue(to),
            IConvertible => Arithmetic.ConvertTo(value, shape, isChecked) ?? new OpenValue(to),
            _ => value,
        });
    }
}

/// <summary>Asks whether the value on the stack is of a type; null never is.</summary>
internal sealed class TypeTest(TypeKey type) : Instruction
{
    public override void Run(Machine machine, Frame frame)
    {
        var value = frame.Pop();
        frame.Push(TypeTests.Is(value, frame.Resolve(type)!, machine) is { } known ? known : new OpenValue(new TypeKey("bool", TypeShape.Bool)));
    }
}

/// <summary><c>as</c>, and casts between reference types: the value, or null, or an exception.</summary>
internal sealed class CastReference(TypeKey type, bool throws) : Instruction
{
    public override void Run(Machine machine, Frame frame)
    {
        var value = frame.Pop();
        if (value is null || TypeTests.Is(value, frame.Resolve(type)!, machine) is not false)
        {
            frame.Push(value);
            return;
        }

        if (throws)
            throw new ThrownByCode("System.InvalidCastException", $"A value that isn't a {type.Id} was cast to it.");
        frame.Push(null);
    }
}

internal static class TypeTests
{
    /// <summary>Whether a value is of a type; none when it can't be told.</summary>
    public static bool? Is(object? value, TypeKey type, Machine machine)
    {
        if (type.Shape == TypeShape.Nullable)
            type = type.Element!;
        return value switch
        {
            null => false,
            OpenValue => null,
            ObjectValue own => type.Shape == TypeShape.User ? machine.Program.IsOfType(own.Type.Id, type.Id) : type.Id is "object" ? true : machine.Program.IsOfType(own.Type.Id, type.Id),
            TextValue => type.Shape == TypeShape.String || type.Id is "object" ? true : type.IsReference && type.Shape == TypeShape.Other ? null : false,
            _ when type.Id is "object" => true,
            _ when type.Host is { } host => host.IsInstanceOfType(value),
            _ when ShapeOf(value) is { } shape => type.Shape == TypeShape.Other ? null : shape == type.Shape,
            _ => null,
        };
    }

    private static TypeShape? ShapeOf(object value) => value switch
    {
        bool => TypeShape.Bool,
        char => TypeShape.Char,
        int => TypeShape.Int32,
        long => TypeShape.Int64,
        float => TypeShape.Single,
        double => TypeShape.Double,
        uint => TypeShape.UInt32,
        ulong => TypeShape.UInt64,
        byte => TypeShape.Byte,
        sbyte => TypeShape.SByte,
        short => TypeShape.Int16,
        ushort => TypeShape.UInt16,
        decimal => TypeShape.Decimal,
        _ => null,
    };
}

/// <summary>Makes an <c>Index</c> from the end.</summary>
internal sealed class MakeIndex : Instruction
{
    public override void Run(Machine machine, Frame frame) =>
        frame.Push(Arithmetic.AsIndex(frame.Pop()) is { } value ? new IndexValue(value, FromEnd: true) : OpenValue.Any);
}

/// <summary>Makes a <c>Range</c> of its two ends.</summary>
internal sealed class MakeRange : Instruction
{
    public override void Run(Machine machine, Frame frame)
    {
        var end = frame.Pop();
        var start = frame.Pop();
        frame.Push(AsIndex(start) is { } from && AsIndex(end) is { } to ? new RangeValue(from, to) : OpenValue.Any);
    }

    private static IndexValue? AsIndex(object? value) => value as IndexValue ?? (Arithmetic.AsIndex(value) is { } index ? new IndexValue(index, false) : null);
}
