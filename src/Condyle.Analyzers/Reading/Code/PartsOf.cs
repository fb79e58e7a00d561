namespace Condyle.Analyzers.Reading;

/// <summary>Asks whether the value on the stack is a tuple of a number of items.</summary>
internal sealed class TupleTest(int count) : Instruction
{
    public override void Run(Machine machine, Frame frame) => frame.Push(frame.Pop() switch
    {
        OpenValue => new OpenValue(OpenValue.Truth),
        ObjectValue own when machine.Program.IsOfType(own.Type.Id, "System.Runtime.CompilerServices.ITuple") => new OpenValue(OpenValue.Truth),
        TupleValue { IsPair: false } tuple => tuple.Items.Length == count,
        _ => false,
    });
}

/// <summary>Makes a tuple of the parts of what lies on the stack: a tuple's own, or a record's in the order of its parameters.</summary>
internal sealed class PartsOf(TypeKey type) : Instruction
{
    public override void Run(Machine machine, Frame frame)
    {
        var value = frame.Pop();
        Fields.ThrowIfNull(value);
        frame.Push(value switch
        {
            TupleValue => value,
            ObjectValue own when machine.Program.PartsOf(own.Type) is { } parts =>
                new TupleValue([.. parts.Select(part => own.Type.IndexOf(part) is >= 0 and var index ? own.Fields[index] : OpenValue.Any)]),
            ObjectValue own when machine.Program.DeconstructorOf(own.Type) is { } deconstruct => Deconstructed(machine, own, deconstruct),
            _ => type.Shape == TypeShape.Tuple ? Opens.Of(type, machine) : OpenValue.Any,
        });
    }

    private static TupleValue Deconstructed(Machine machine, ObjectValue own, CodeBody deconstruct)
    {
        var parts = new object?[deconstruct.ParameterCount];
        machine.Call(deconstruct, own, [.. parts.Select((_, index) => (object?)new Cell(parts, index))]);
        return new TupleValue(parts);
    }
}
