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
        else if (owner is OpenValue)
            StoreInUnknown(machine, value);
        else
            Fields.ThrowIfNull(owner);
    }

    private void StoreInUnknown(Machine machine, object? value)
    {
        machine.Lost.Store(field, value);
        machine.Changes.Store(field);
    }
}

internal sealed class PushFieldCell(string field) : Instruction
{
    public override void Run(Machine machine, Frame frame)
    {
        var owner = frame.Pop();
        Fields.ThrowIfNull(owner);
        if (owner is OpenValue)
            machine.Changes.Store(field); // whoever gets the place may store there
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
        if (Components.Get(owner, field) is { } component)
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

internal sealed class LoadStatic(TypeKey type, string field, bool keepsSeam) : Instruction
{
    public override void Run(Machine machine, Frame frame)
    {
        var cell = machine.StaticOf(frame.Resolve(type)!, field);
        var value = cell.Items[cell.Index];
        if (value is IHandle handle && !Handles.IsMade(handle))
            machine.Unset[handle.GetType()] = $"{type.Name}.{field.Substring(field.LastIndexOf('.') + 1)}";
        frame.Push(!keepsSeam && value is TextValue text ? text.WithoutSeam() : value);
    }
}

internal sealed class StoreStatic(TypeKey type, string field) : Instruction
{
    public override void Run(Machine machine, Frame frame)
    {
        var cell = machine.StaticOf(frame.Resolve(type)!, field);
        machine.Write(cell.Items, cell.Index, frame.Pop());
    }
}

internal sealed class PushStaticCell(TypeKey type, string field) : Instruction
{
    public override void Run(Machine machine, Frame frame) => frame.Push(machine.StaticOf(frame.Resolve(type)!, field));
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

/// <summary>Gathers the parts of a collection expression; a spread part adds all its items.</summary>
internal sealed class GatherItems(IReadOnlyList<bool> spreads, TypeKey? itemType, Wrapping wrapping) : Instruction
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
                machine.Lost.AddAll(parts);
                frame.Push(OpenValue.Any);
                return;
            }

            var type = frame.Resolve(itemType);
            foreach (var item in more)
                Sequences.AddLimited(items, type is { Shape: >= TypeShape.Char and <= TypeShape.Decimal } ? ConvertNumber.Convert(item, type, false) : item);
        }

        frame.Push(new ArrayValue([.. items], null, frame.Resolve(itemType)) { Wrapping = items.Count == 0 && wrapping == Wrapping.AroundArray ? Wrapping.None : wrapping });
    }
}
