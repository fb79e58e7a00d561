namespace Condyle.Analyzers.Reading;

/// <summary>Converts each item of the tuple on the stack to that of another tuple's type.</summary>
internal sealed class ConvertTuple(TypeKey from, TypeKey to) : Instruction
{
    public override void Run(Machine machine, Frame frame) => frame.Push(Converted(frame.Pop(), frame.Resolve(from)!, frame.Resolve(to)!));

    private static object? Converted(object? value, TypeKey from, TypeKey to)
    {
        if (value is not TupleValue tuple || from.Arguments.Count != tuple.Items.Length || to.Arguments.Count != tuple.Items.Length)
            return value;
        return new TupleValue([.. tuple.Items.Select((item, at) => Item(item, from.Arguments[at], to.Arguments[at]))]);
    }

    private static object? Item(object? item, TypeKey from, TypeKey to)
    {
        if (from.Equals(to) || to.IsReference || (to.Shape == TypeShape.Nullable && from.Equals(to.Element)))
            return item;
        return to.Shape == TypeShape.Tuple ? Converted(item, from, to)
            : IsNumber(from) && IsNumber(to) ? ConvertNumber.Convert(item, to, false)
            : new OpenValue(to);
    }

    private static bool IsNumber(TypeKey type) => (type is { Shape: TypeShape.Nullable, Element: { } element } ? element : type).Shape is >= TypeShape.Char and <= TypeShape.Decimal;
}
