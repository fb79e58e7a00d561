namespace Condyle.Analyzers.Reading;

/// <summary>Pushes a value that is known when the code is lowered.</summary>
internal sealed class PushConstant(object? value) : Instruction
{
    public override void Run(Machine machine, Frame frame) => frame.Push(value);

    protected override void Move(Relocation to) => value = value is TextValue text ? text.Moved(to) : value;
}

/// <summary>Pushes the default of a type.</summary>
internal sealed class PushDefault(TypeKey type) : Instruction
{
    public override void Run(Machine machine, Frame frame) => frame.Push(Defaults.Of(frame.Resolve(type), machine));
}

/// <summary>Pushes a new object of an anonymous type.</summary>
internal sealed class PushDefaultObject(string type) : Instruction
{
    public override void Run(Machine machine, Frame frame) => frame.Push(machine.Program.AnonymousType(type).New(machine));
}

/// <summary>Pushes an unknown value of a type.</summary>
internal sealed class PushOpen(TypeKey? type) : Instruction
{
    public override void Run(Machine machine, Frame frame) => frame.Push(Opens.Of(frame.Resolve(type!), machine));
}

internal sealed class Pop : Instruction
{
    public override void Run(Machine machine, Frame frame) => frame.Pop();
}

internal sealed class Duplicate : Instruction
{
    public override void Run(Machine machine, Frame frame) => frame.Push(frame.Peek());
}

/// <summary>Copies a struct or tuple, as C# does when one is assigned.</summary>
internal sealed class CopyValue : Instruction
{
    public override void Run(Machine machine, Frame frame) => frame.Push(ValueCopies.Of(frame.Pop()));
}

/// <summary>Copies an object as <c>with</c> does, a class's too.</summary>
internal sealed class CloneObject : Instruction
{
    public override void Run(Machine machine, Frame frame)
    {
        var value = frame.Pop();
        Fields.ThrowIfNull(value);
        frame.Push(value is ObjectValue own ? own.Copy() : ValueCopies.Of(value));
    }
}

/// <summary>Asks whether the value on the stack is null.</summary>
internal sealed class NullTest : Instruction
{
    public override void Run(Machine machine, Frame frame) => frame.Push(machine.IsMissing(frame.Pop()));
}

/// <summary>Goes on where what lies on the stack isn't null, also where nothing else is known of it.</summary>
internal sealed class TakeAsThere : Instruction
{
    public override void Run(Machine machine, Frame frame)
    {
        var value = frame.Pop();
        frame.Push(value is TextValue { MayBeNull: true } text ? text.There() : value);
    }
}

/// <summary>Fails where what lies on the stack is null, also where that isn't known but would be caught.</summary>
internal sealed class NullCheck : Instruction
{
    public override void Run(Machine machine, Frame frame) => machine.MayBeNull(frame.Peek());
}

/// <summary>Sets a component of the vector on the stack to the value above it.</summary>
internal sealed class SetComponent(string component) : Instruction
{
    public override void Run(Machine machine, Frame frame)
    {
        var value = frame.Pop();
        frame.Push(Components.With(frame.Pop(), component, value) ?? OpenValue.Any);
    }
}

internal sealed class PushThis : Instruction
{
    public override void Run(Machine machine, Frame frame) => frame.Push(frame.This);
}

internal sealed class LoadSlot(int slot) : Instruction
{
    public override void Run(Machine machine, Frame frame) => frame.Push(frame.Slots[slot]);
}

internal sealed class StoreSlot(int slot) : Instruction
{
    public override void Run(Machine machine, Frame frame) => machine.Write(frame.Slots, slot, frame.Pop());
}

/// <summary>Loads a variable that nested functions share.</summary>
internal sealed class LoadShared(int slot) : Instruction
{
    public override void Run(Machine machine, Frame frame) => frame.Push(((object?[])frame.Slots[slot]!)[0]);
}

internal sealed class StoreShared(int slot) : Instruction
{
    public override void Run(Machine machine, Frame frame) => machine.Write((object?[])frame.Slots[slot]!, 0, frame.Pop());
}

/// <summary>Makes a new variable for nested functions to share: each turn of a loop has its own.</summary>
internal sealed class RenewShared(int slot) : Instruction
{
    public override void Run(Machine machine, Frame frame) => machine.Write(frame.Slots, slot, new object?[1]);
}

/// <summary>Makes a structure the same as the value on the stack.</summary>
internal sealed class StoreThis : Instruction
{
    public override void Run(Machine machine, Frame frame)
    {
        var value = frame.Pop();
        if (frame.This is not ObjectValue own)
            return;
        for (var i = 0; i < own.Fields.Length; i++)
            machine.Write(own.Fields, i, value is ObjectValue { Fields: var fields } && fields.Length == own.Fields.Length ? fields[i] : OpenValue.Any);
    }
}

/// <summary>Pushes the place of a variable, for <c>ref</c> and <c>out</c>.</summary>
internal sealed class PushSlotCell(int slot, bool isShared) : Instruction
{
    public override void Run(Machine machine, Frame frame) =>
        frame.Push(isShared ? new Cell((object?[])frame.Slots[slot]!, 0) : new Cell(frame.Slots, slot));
}

/// <summary>Loads through a reference that lies in a slot.</summary>
internal sealed class LoadThrough(int slot, bool isShared) : Instruction
{
    public override void Run(Machine machine, Frame frame)
    {
        var held = isShared ? ((object?[])frame.Slots[slot]!)[0] : frame.Slots[slot];
        frame.Push(held is Cell cell ? cell.Items[cell.Index] : OpenValue.Any);
    }
}

internal sealed class StoreThrough(int slot, bool isShared) : Instruction
{
    public override void Run(Machine machine, Frame frame)
    {
        var held = isShared ? ((object?[])frame.Slots[slot]!)[0] : frame.Slots[slot];
        var value = frame.Pop();
        if (held is Cell cell)
            machine.Write(cell.Items, cell.Index, value);
        else
            machine.Lost.StoreAnywhere();
    }
}

/// <summary>Loads what lies at the place on the stack.</summary>
internal sealed class LoadPlace : Instruction
{
    public override void Run(Machine machine, Frame frame) => frame.Push(frame.Pop() is Cell cell ? cell.Items[cell.Index] : OpenValue.Any);
}

/// <summary>Pushes a type.</summary>
internal sealed class PushType(TypeKey type) : Instruction
{
    public override void Run(Machine machine, Frame frame) => frame.Push(frame.Resolve(type));
}

/// <summary>Makes the text of an interpolation or concatenation from the parts on the stack; literals have no hole.</summary>
internal sealed class JoinText(IReadOnlyList<Hole?> holes, Seam? seam) : Instruction
{
    private static readonly Hole Plain = new();

    public override void Run(Machine machine, Frame frame)
    {
        var parts = frame.PopMany(holes.Count);
        var texts = new TextValue[parts.Length];
        for (var i = 0; i < parts.Length; i++)
            texts[i] = (holes[i] ?? Plain).Fill(parts[i], machine);
        frame.Push(TextValue.Join(texts, seam));
    }

    protected override void Move(Relocation to) => seam = seam is null ? null : to.Of(seam);
}

/// <summary>Makes an interpolated text whose culture is chosen by whoever takes it.</summary>
internal sealed class MakeFormattable(IReadOnlyList<Hole?> holes) : Instruction
{
    public override void Run(Machine machine, Frame frame) => frame.Push(new FormattableValue(frame.PopMany(holes.Count), holes));
}

/// <summary>Something in the code that the reading doesn't understand: it may have said anything.</summary>
internal sealed class Unread(string what, TypeKey? type) : Instruction
{
    public override void Run(Machine machine, Frame frame)
    {
        machine.Lose(new Origin(frame.Body.Path, Span), $"{what} is not read");
        frame.Push(type is null ? OpenValue.Any : Opens.Of(frame.Resolve(type), machine));
    }
}
