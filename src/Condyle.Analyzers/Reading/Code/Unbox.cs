namespace Condyle.Analyzers.Reading;

/// <summary>Takes the value on the stack for one that is there: it's an error if it isn't.</summary>
internal sealed class TakeValue : Instruction
{
    public override void Run(Machine machine, Frame frame)
    {
        var value = frame.Pop();
        if (value is OpenValue)
            machine.MayThrow("a value may be missing");
        frame.Push(value ?? throw new ThrownByCode("System.InvalidOperationException", "A value that is missing was taken."));
    }
}

/// <summary>A cast of an object to a type of value: only what is exactly of that type comes out, as a copy, but an enum and its number stand for each other.</summary>
internal sealed class Unbox(TypeKey type) : Instruction
{
    public override void Run(Machine machine, Frame frame)
    {
        var wanted = frame.Resolve(type)!;
        var value = frame.Pop();
        if (value is OpenValue or TextValue { MayBeNull: true })
        {
            machine.MayThrow("a cast may fail");
            frame.Push(value);
            return;
        }

        if (value is null && !wanted.IsReference && wanted.Shape is not (TypeShape.Nullable or TypeShape.Parameter))
            throw new ThrownByCode("System.NullReferenceException", $"A {wanted.Name} was taken out of null.");
        var plain = wanted is { Shape: TypeShape.Nullable, Element: { } element } ? element : wanted;
        frame.Push(value is null || TypeTests.Is(value, plain, machine) is not false ? ValueCopies.Of(value)
            : OfSameNumber(value, plain) ?? throw new ThrownByCode("System.InvalidCastException", $"A value that isn't a {plain.Name} was cast to it."));
    }

    private static object? OfSameNumber(object value, TypeKey wanted)
    {
        var shape = wanted.Shape == TypeShape.Enum ? wanted.Element!.Shape : wanted.Shape;
        return EnumValue.NumberOf(value) is { } number && (value is EnumValue || wanted.Shape == TypeShape.Enum) && TypeTests.ShapeOf(number) == shape
            ? ConvertNumber.Convert(value, wanted, false)
            : null;
    }
}
