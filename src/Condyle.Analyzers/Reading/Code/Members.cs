namespace Condyle.Analyzers.Reading;

/// <summary>Loads a field, or the field behind a property, of the object on the stack.</summary>
internal sealed class LoadField(string field, TypeKey type) : Instruction
{
    public override void Run(Machine machine, Frame frame) => frame.Push(Fields.Load(machine, frame.Pop(), field, type));
}

/// <summary>Stores the value on the stack in a field of the object below it.</summary>
internal sealed class StoreField(string field) : Instruction
{
    public override void Run(Machine machine, Frame frame)
    {
        var value = frame.Pop();
        var owner = frame.Pop();
        if (Fields.CellOf(owner, field) is { } cell)
            machine.Write(cell.Items, cell.Index, value);
        else
            Fields.ThrowIfNull(owner);
    }
}

internal sealed class PushFieldCell(string field) : Instruction
{
    public override void Run(Machine machine, Frame frame)
    {
        var owner = frame.Pop();
        Fields.ThrowIfNull(owner);
        frame.Push((object?)Fields.CellOf(owner, field) ?? OpenValue.Any);
    }
}

internal static class Fields
{
    public static object? Load(Machine machine, object? owner, string field, TypeKey type)
    {
        ThrowIfNull(owner);
        if (CellOf(owner, field) is { } cell)
            return cell.Items[cell.Index] is OpenValue { Type: null } any && any == OpenValue.Any ? Opens.Of(type, machine) : cell.Items[cell.Index];
        if (NumericsCalls.Field(owner, field) is { } component)
            return component;
        return owner is OpenValue { Type: not null } open ? machine.MemberOf(open, field, type) : Opens.Of(type, machine);
    }

    public static Cell? CellOf(object? owner, string field) => owner switch
    {
        ObjectValue own when own.Type.IndexOf(field) is >= 0 and var index => new Cell(own.Fields, index),
        TupleValue tuple when int.TryParse(field, out var item) && item < tuple.Items.Length => new Cell(tuple.Items, item),
        _ => null,
    };

    public static void ThrowIfNull(object? owner)
    {
        if (owner is null)
            throw new ThrownByCode("System.NullReferenceException", "Something that is null was used.");
    }
}

internal sealed class LoadStatic(string type, string field, bool keepsSeam) : Instruction
{
    public override void Run(Machine machine, Frame frame)
    {
        var values = machine.StaticsOf(type);
        var value = values[machine.Program.StaticsOf(type).IndexOf(field)];
        frame.Push(!keepsSeam && value is TextValue text ? text.WithoutSeam() : value);
    }
}

internal sealed class StoreStatic(string type, string field) : Instruction
{
    public override void Run(Machine machine, Frame frame) =>
        machine.Write(machine.StaticsOf(type), machine.Program.StaticsOf(type).IndexOf(field), frame.Pop());
}

internal sealed class MakeTuple(int count) : Instruction
{
    public override void Run(Machine machine, Frame frame) => frame.Push(new TupleValue(frame.PopMany(count)));
}

/// <summary>Takes a tuple apart: its items end on the stack, the last on top.</summary>
internal sealed class SplitTuple(int count) : Instruction
{
    public override void Run(Machine machine, Frame frame)
    {
        var items = (frame.Pop() as TupleValue)?.Items;
        for (var i = 0; i < count; i++)
            frame.Push(items is not null && i < items.Length ? items[i] : OpenValue.Any);
    }
}

internal sealed class MakeArray(int count) : Instruction
{
    public override void Run(Machine machine, Frame frame) => frame.Push(new ArrayValue(frame.PopMany(count)));
}

/// <summary>Makes an array of the length on the stack, filled with the default of its item type.</summary>
internal sealed class NewArray(TypeKey itemType) : Instruction
{
    public override void Run(Machine machine, Frame frame)
    {
        if (Arithmetic.AsIndex(frame.Pop()) is not { } length)
        {
            frame.Push(OpenValue.Any);
            return;
        }

        if (length < 0)
            throw new ThrownByCode("System.OverflowException", "An array can't have a negative length.");
        if (length > Limits.Items)
            throw new ReadingStopped($"an array has more than {Limits.Items} items");
        machine.Budget.Make(length);
        var items = new object?[length];
        for (var i = 0; i < length; i++)
            items[i] = Defaults.Of(frame.Resolve(itemType), machine);
        frame.Push(new ArrayValue(items));
    }
}

internal sealed class LoadElement(TypeKey type) : Instruction
{
    public override void Run(Machine machine, Frame frame)
    {
        var index = frame.Pop();
        var array = frame.Pop();
        frame.Push(Elements.CellOf(array, index) is { } cell ? cell.Items[cell.Index] : Opens.Of(type, machine));
    }
}

internal sealed class StoreElement : Instruction
{
    public override void Run(Machine machine, Frame frame)
    {
        var value = frame.Pop();
        var index = frame.Pop();
        var array = frame.Pop();
        if (Elements.CellOf(array, index) is { } cell)
        {
            machine.Write(cell.Items, cell.Index, value);
        }
        else if (array is ArrayValue known)
        {
            // Which item was written isn't known, so each may have been.
            machine.Budget.Spend(known.Items.Length);
            for (var i = 0; i < known.Items.Length; i++)
                machine.Write(known.Items, i, OpenValue.Any);
        }
    }
}

internal sealed class PushElementCell : Instruction
{
    public override void Run(Machine machine, Frame frame)
    {
        var index = frame.Pop();
        frame.Push((object?)Elements.CellOf(frame.Pop(), index) ?? OpenValue.Any);
    }
}

internal static class Elements
{
    public static Cell? CellOf(object? array, object? index)
    {
        Fields.ThrowIfNull(array);
        if (array is not ArrayValue known || Arithmetic.AsIndex(index, known.Items.Length) is not { } at)
            return null;
        if (at < 0 || at >= known.Items.Length)
            throw new ThrownByCode("System.IndexOutOfRangeException", $"There is no item {at} in an array of {known.Items.Length}.");
        return new Cell(known.Items, at);
    }
}

/// <summary>Gathers the parts of a collection expression; a spread part adds all its items.</summary>
internal sealed class GatherItems(IReadOnlyList<bool> spreads, CollectionTarget target) : Instruction
{
    public override void Run(Machine machine, Frame frame)
    {
        var parts = frame.PopMany(spreads.Count);
        var items = new List<object?>();
        for (var i = 0; i < parts.Length; i++)
        {
            if (!spreads[i])
            {
                items.Add(parts[i]);
                continue;
            }

            if (Sequences.ListOf(parts[i], machine) is not { } more)
            {
                frame.Push(OpenValue.Any);
                return;
            }

            foreach (var item in more)
                Sequences.AddLimited(items, item);
        }

        frame.Push(target switch
        {
            CollectionTarget.Array => new ArrayValue([.. items]),
            CollectionTarget.Set => new ListValue(CollectionKind.Set, items.Distinct(KnownEquality.Same)),
            _ => new ListValue(CollectionKind.List, items),
        });
    }
}

internal enum CollectionTarget
{
    Array,
    List,
    Set,
}
