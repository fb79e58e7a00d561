namespace Condyle.Analyzers.Reading;

/// <summary>Makes an array of the items on the stack.</summary>
internal sealed class MakeArray(int count, TypeKey itemType, int[]? lengths = null) : Instruction
{
    public override void Run(Machine machine, Frame frame)
    {
        var items = frame.PopMany(count);
        // Rows that aren't equally long don't compile.
        frame.Push(lengths is null || lengths.Aggregate(1L, (product, length) => product * length) == count ? new ArrayValue(items, lengths, frame.Resolve(itemType)) : OpenValue.Any);
    }
}

/// <summary>Makes an array of the lengths on the stack, filled with the default of its item type.</summary>
internal sealed class NewArray(TypeKey itemType, int dimensions = 1) : Instruction
{
    public override void Run(Machine machine, Frame frame)
    {
        var lengths = new int[dimensions];
        var given = frame.PopMany(dimensions);
        long count = 1;
        for (var i = 0; i < dimensions; i++)
        {
            if (Arithmetic.AsIndex(given[i]) is not { } length)
            {
                frame.Push(OpenValue.Any);
                return;
            }

            if (length < 0)
                throw new ThrownByCode("System.OverflowException", "An array can't have a negative length.");
            lengths[i] = length;
            count *= length;
            if (count > Limits.Items)
                throw new ReadingStopped($"an array has more than {Limits.Items} items");
        }

        machine.Budget.Make((int)count);
        var items = new object?[count];
        var type = frame.Resolve(itemType);
        for (var i = 0; i < items.Length; i++)
            items[i] = i > 0 && items[0] is not (ObjectValue or TupleValue) ? items[0] : Defaults.Of(type, machine);
        frame.Push(new ArrayValue(items, lengths, type));
    }
}

internal sealed class LoadElement(TypeKey type, int dimensions = 1) : Instruction
{
    public override void Run(Machine machine, Frame frame)
    {
        if (Elements.PopCell(frame, dimensions, out var array) is { } cell)
        {
            frame.Push(cell.Items[cell.Index]);
            return;
        }

        machine.Lost.Add(array);
        frame.Push(Opens.Of(frame.Resolve(type), machine));
    }
}

internal sealed class StoreElement(int dimensions = 1) : Instruction
{
    public override void Run(Machine machine, Frame frame)
    {
        var value = frame.Pop();
        if (Elements.PopCell(frame, dimensions, out var array) is { } cell)
            machine.Write(cell.Items, cell.Index, value);
        else if (array is IStretch or ObjectValue)
            Elements.Lose(array, machine, value);
        else
            machine.Lost.StoreItem(value);
    }
}

internal sealed class PushElementCell(int dimensions = 1) : Instruction
{
    public override void Run(Machine machine, Frame frame)
    {
        var cell = Elements.PopCell(frame, dimensions, out var array);
        if (cell is null)
            machine.Lost.Add(array);
        frame.Push((object?)cell ?? OpenValue.Any);
    }
}

/// <summary>Makes a span of the array on the stack; what isn't known stays so.</summary>
internal sealed class MakeSpan : Instruction
{
    public override void Run(Machine machine, Frame frame) => frame.Push(Of(frame.Pop()));

    public static object? Of(object? value) => value switch
    {
        null => new SpanValue([], 0, 0),
        ArrayValue array => SpanValue.Over(array),
        ObjectValue { Inline: { } items } => items,
        _ => value,
    };
}

internal static class Elements
{
    /// <summary>Takes the indices of an item, and what it lies in, off the stack.</summary>
    public static Cell? PopCell(Frame frame, int dimensions, out object? array)
    {
        if (dimensions != 1) // none while somebody types
        {
            var indices = frame.PopMany(dimensions);
            array = frame.Pop();
            return CellOf(array, indices);
        }

        var index = frame.Pop();
        array = frame.Pop();
        return CellOf(array, index);
    }

    public static Cell? CellOf(object? array, object? index) =>
        array is ArrayValue { Lengths.Length: 1 } row && index is int at && at >= 0 && at < row.Items.Length ? new Cell(row.Items, at) : CellOf(array, [index]);

    public static Cell? CellOf(object? array, object?[] indices)
    {
        Fields.ThrowIfNull(array);
        if (array is ObjectValue { Inline: { } inline })
            array = inline;

        // The characters of a text can be looked at as a span's, and never written.
        if (array is TextValue text && indices.Length == 1 && text.TryKnown(out var characters))
        {
            return Arithmetic.AsIndex(indices[0], characters.Length) is not { } character ? null
                : character >= 0 && character < characters.Length ? new Cell([characters[character]], 0)
                : throw new ThrownByCode("System.IndexOutOfRangeException", $"There is no character {character} in a text of {characters.Length}.");
        }

        if (array is not IStretch known)
            return null;
        var (lengths, at) = (array is ArrayValue own ? own.Lengths : [known.Length], new int[indices.Length]);
        if (lengths.Length != indices.Length)
            return null;
        for (var i = 0; i < at.Length; i++)
        {
            if (Arithmetic.AsIndex(indices[i], lengths[i]) is not { } index)
                return null;
            at[i] = index;
        }

        var position = array is ArrayValue rows ? rows.PositionOf(at) : at[0] >= 0 && at[0] < known.Length ? known.Start + at[0] : -1;
        return position >= 0
            ? new Cell(known.Items, position)
            : throw new ThrownByCode("System.IndexOutOfRangeException", $"There is no item {string.Join(", ", at)} in an array of {string.Join(" × ", lengths)}.");
    }

    /// <summary>Which item was written isn't known, so each may have been.</summary>
    public static void Lose(object? array, Machine machine, object? stored = null)
    {
        machine.Lost.Add(stored);
        if ((array as ObjectValue)?.Inline is { } inline)
            array = inline;
        if (array is not IStretch known)
            return;
        machine.Budget.Spend(known.Length);
        for (var i = 0; i < known.Length; i++)
            machine.Lost.Add(known.Items[known.Start + i]);
        for (var i = 0; i < known.Length; i++)
            machine.Write(known.Items, known.Start + i, OpenValue.Any);
    }
}
