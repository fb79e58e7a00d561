namespace Condyle.Analyzers.Reading;

internal sealed class Jump(JumpLabel target) : Instruction
{
    public override void Run(Machine machine, Frame frame) => frame.Position = target.Position;
}

/// <summary>Goes on, or jumps if the condition on the stack is what it waits for; an unknown one is read both ways.</summary>
/// <param name="target">Where it jumps to.</param>
/// <param name="when">Which condition makes it jump.</param>
/// <param name="stops">Where the two ways meet: the join first, then the ends of the loops around it.</param>
internal sealed class Branch(JumpLabel target, bool when, JumpLabel[] stops) : Instruction
{
    public override void Run(Machine machine, Frame frame)
    {
        var asked = machine.Decide(frame.Pop());
        if (asked is bool condition)
        {
            if (condition == when)
                frame.Position = target.Position;
            return;
        }

        var (yes, no) = when ? (target.Position, frame.Position) : (frame.Position, target.Position);
        machine.Both(frame, asked, yes, no, stops);
    }
}

/// <summary>The test at the head of a loop: leaves it when the condition fails; an unknown one makes a loop of unknown length.</summary>
/// <param name="stops">The loop's head, its exit, then the ends of the loops around it.</param>
internal sealed class LoopTest(JumpLabel[] stops) : Instruction
{
    public override void Run(Machine machine, Frame frame)
    {
        if (machine.Decide(frame.Pop()) is bool condition)
        {
            if (!condition)
                frame.Position = stops[1].Position;
            return;
        }

        machine.ManyTurns(frame, frame.Position, stops);
    }
}

/// <summary>Begins to enumerate what lies on the stack; the enumerator takes its place.</summary>
internal sealed class StartEnumeration(int slot, bool ofPlaces) : Instruction
{
    public override void Run(Machine machine, Frame frame)
    {
        var value = frame.Pop();
        if (value is ICollectionValue { IsOpen: true })
            machine.Lost.Add(value);
        else if (value is OpenValue)
            machine.Lost.Enumerate();
        var items = ofPlaces ? Sequences.CellsOf(value) : value is OpenSequence ? null : Sequences.Of(value, machine);
        machine.Write(frame.Slots, slot, items is not null ? new Enumeration(value, items.GetEnumerator()) : value is OpenSequence ? value : OpenValue.Any);
    }

    internal sealed class Enumeration(object? of, IEnumerator<object?> items)
    {
        public object? Of { get; } = of;

        public IEnumerator<object?> Items { get; } = items;
    }
}

/// <summary>Moves an enumeration on and pushes its item, or leaves the loop. What can't be enumerated is a loop of unknown length.</summary>
/// <param name="slot">Where the enumerator lies.</param>
/// <param name="itemType">The type of an item.</param>
/// <param name="stops">The loop's head, its exit, then the ends of the loops around it.</param>
internal sealed class NextItem(int slot, TypeKey itemType, JumpLabel[] stops) : Instruction
{
    public override void Run(Machine machine, Frame frame)
    {
        if (frame.Slots[slot] is StartEnumeration.Enumeration items)
        {
            try
            {
                if (items.Items.MoveNext())
                    frame.Push(items.Items.Current);
                else
                    frame.Position = stops[1].Position;
                return;
            }
            catch (AnswerIsOpen open)
            {
                Sequences.Lose(items.Of, open, machine);
                machine.Lost.Add(items.Of);
                machine.Write(frame.Slots, slot, OpenValue.Any);
            }
        }

        var type = frame.Resolve(itemType);
        var sequence = frame.Slots[slot] as OpenSequence;
        machine.ManyTurns(frame, frame.Position, stops, () => sequence is null ? Opens.Of(type, machine) : sequence.Item());
    }
}

/// <summary>Leaves an enumeration: an iterator that isn't at its end runs its final parts.</summary>
internal sealed class EndEnumeration(int slot) : Instruction
{
    public override void Run(Machine machine, Frame frame)
    {
        if (frame.Slots[slot] is not StartEnumeration.Enumeration items)
            return;
        // Where it isn't sure that the loop is left, the items may be asked for again.
        if (!machine.IsSpeculating)
            items.Items.Dispose();
        else if (items.Of is IteratorValue { HasFinalParts: true })
            throw new ReadingStopped("whether an iterator with a final part is left depends on an unknown condition");
    }
}

internal sealed class Return(bool hasValue) : Instruction
{
    public override void Run(Machine machine, Frame frame) => machine.Return(frame, hasValue ? frame.Pop() : null);
}

/// <summary>Hands an item of an iterator to whoever enumerates it.</summary>
internal sealed class YieldItem : Instruction
{
    public override void Run(Machine machine, Frame frame) => machine.Yield(frame, frame.Pop());
}

internal sealed class Throw(TypeKey? type) : Instruction
{
    public override void Run(Machine machine, Frame frame)
    {
        var value = frame.Pop();
        if (value is ThrownByCode again)
            throw again;
        throw value switch
        {
            null => new ThrownByCode("System.NullReferenceException", "Something that is null was thrown."),
            ObjectValue own => new ThrownByCode(own.Type.Id, MessageOf(own), own),
            ExceptionValue known => new ThrownByCode(known.Type, MessageOf(known), known),
            _ => machine.UnknownThrown(type?.Id ?? "System.Exception"),
        };
    }

    private static string MessageOf(object thrown) => ExceptionValue.Of(thrown) is { } known && known.Message.TryKnown(out var message) ? message : "";
}

/// <summary>Asks whether the exception on the stack is of a type.</summary>
internal sealed class CatchTest(TypeKey type) : Instruction
{
    public override void Run(Machine machine, Frame frame)
    {
        var thrown = (ThrownByCode)frame.Pop()!;
        frame.Push(machine.Program.IsException(thrown.Type, type.Id) ? true
            : thrown.IsOfUnknownKind && machine.Program.IsException(type.Id, thrown.Type) ? new OpenValue(OpenValue.Truth)
            : false);
    }
}

/// <summary>Takes the exception object out of what was caught.</summary>
internal sealed class CaughtObject : Instruction
{
    public override void Run(Machine machine, Frame frame)
    {
        var thrown = (ThrownByCode)frame.Pop()!;
        // What the framework writes in its own exceptions isn't known.
        frame.Push(thrown.Value ?? ExceptionValue.OfFramework(thrown.Type));
    }
}
