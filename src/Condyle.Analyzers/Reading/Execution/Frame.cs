namespace Condyle.Analyzers.Reading;

/// <summary>A function that is running: on the heap, so that it can be left and resumed.</summary>
internal sealed class Frame
{
    /// <summary>How many slots are made in the time of an instruction.</summary>
    public const int SlotsMadeInAStep = 64;

    private object?[] stack = new object?[8];

    public Frame(CodeBody body, object? self)
    {
        Body = body;
        This = self;
        Slots = new object?[body.SlotCount];
        foreach (var slot in body.CapturedSlots)
            Slots[slot] = new object?[1];
    }

    public CodeBody Body { get; }

    public object? This { get; }

    public object?[] Slots { get; }

    public int Position { get; set; }

    public Frame? Caller { get; set; }

    /// <summary>Where it was called; none for what is called from outside.</summary>
    public CallSite? Site { get; set; }

    public bool IsDone { get; set; }

    public object? Result { get; set; }

    /// <summary>Whether it stopped to hand out an item and goes on when the next one is asked for.</summary>
    public bool HasYielded { get; set; }

    /// <summary>Whether it has come upon an item of which it isn't known whether it is handed out.</summary>
    public bool HasOpenItems { get; set; }

    /// <summary>While an arm of an unknown condition runs, returning only marks the frame as done.</summary>
    public bool IsHeld { get; set; }

    /// <summary>Whether the caller's stack takes the result: not for property setters and other functions without one.</summary>
    public bool PushesResult { get; set; } = true;

    /// <summary>What the code that called it does with the task that it may get.</summary>
    public Waiting Waiting { get; set; }

    /// <summary>Whether those that called an async function may go on before it is at its end.</summary>
    public bool IsAwaitedByNobody { get; set; }

    /// <summary>Whether an async function has awaited what may not have been there.</summary>
    public bool HasWaited { get; set; }

    /// <summary>Whether those that called an async function may have gone on already.</summary>
    public bool IsLeft { get; set; }

    /// <summary>What an async function threw after those that called it may have gone on.</summary>
    public ThrownByCode? Thrown { get; set; }

    /// <summary>From where on it isn't sure that this still runs: what is written from there on is open in the end.</summary>
    public Uncertainty? Uncertain { get; set; }

    public IReadOnlyDictionary<string, TypeKey>? TypeArguments { get; set; }

    public int StackCount { get; private set; }

    public void Push(object? value)
    {
        if (StackCount == stack.Length)
            Array.Resize(ref stack, stack.Length * 2);
        stack[StackCount++] = value;
    }

    public object? Pop() => stack[--StackCount];

    public object? Peek() => stack[StackCount - 1];

    public object?[] PopMany(int count)
    {
        if (count == 0)
            return [];
        var values = new object?[count];
        StackCount -= count;
        Array.Copy(stack, StackCount, values, 0, count);
        return values;
    }

    public object?[] CopyStack()
    {
        var copy = new object?[StackCount];
        Array.Copy(stack, copy, StackCount);
        return copy;
    }

    public void RestoreStack(object?[] saved)
    {
        StackCount = 0;
        foreach (var value in saved)
            Push(value);
    }

    /// <summary>The type with what the type parameters stand for here.</summary>
    public TypeKey? Resolve(TypeKey? type) => TypeArguments is not null && type is { HasParameters: true } ? type.With(TypeArguments) : type;

    /// <summary>The method with what the type parameters stand for here.</summary>
    public MethodRef Resolve(MethodRef method) => TypeArguments is not null && method.HasParameters
        ? method with
        {
            Returns = Resolve(method.Returns),
            TypeArguments = [.. method.TypeArguments.Select(argument => argument.With(TypeArguments))],
            Parameters = [.. method.Parameters.Select(parameter => parameter.With(TypeArguments))],
            On = Resolve(method.On),
        }
        : method;
}
