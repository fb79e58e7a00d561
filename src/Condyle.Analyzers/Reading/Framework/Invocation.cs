namespace Condyle.Analyzers.Reading;

/// <summary>One call of a framework method: the receiver first, then the arguments.</summary>
internal sealed class Invocation(Machine machine, MethodRef method, object?[] arguments)
{
    public Machine Machine => machine;

    public MethodRef Method => method;

    public object?[] Arguments => arguments;

    public int Count => arguments.Length;

    /// <summary>An argument as it is; none where it is left out.</summary>
    public object? this[int index] => index < arguments.Length ? arguments[index] : null;

    /// <summary>An argument, or what it holds where it is handed over by reference.</summary>
    public object? Given(int index) => this[index] is Cell cell ? cell.Items[cell.Index] : this[index];

    /// <summary>A whole number.</summary>
    public int Whole(int index) => Arithmetic.AsIndex(machine.Decide(this[index])) ?? throw Unknown();

    /// <summary>A value that is known whole, to be compared with others.</summary>
    public object? Key(int index)
    {
        var key = machine.Decide(this[index]);
        machine.Calls.Observe(key);
        return KnownEquality.IsKnown(key) ? key : throw Unknown();
    }

    /// <summary>A text that is known whole.</summary>
    public string Text(int index) => this[index] switch
    {
        null => throw Missing(),
        TextValue text when text.TryKnown(out var known) => Observed(text, known),
        _ => throw Unknown(),
    };

    public FunctionValue Function(int index) => this[index] switch
    {
        null => throw Missing(),
        FunctionValue known => known,
        _ => throw Unknown(),
    };

    /// <summary>The items of an argument, lazily.</summary>
    public IEnumerable<object?> Items(int index)
    {
        if (this[index] is null)
            throw Missing();
        return Sequences.Of(this[index], machine) ?? throw Unknown();
    }

    /// <summary>An answer that user code gave, where it has to be known to go on.</summary>
    public bool Truth(object? value) => machine.Decide(value) is bool known ? known : throw Unknown();

    /// <summary>The default of a type that the method or the type around it is made for.</summary>
    public object? Default(int typeArgument = 0) =>
        typeArgument < method.TypeArguments.Count ? Defaults.Of(method.TypeArguments[typeArgument], machine) : throw Unknown();

    /// <summary>The declared type of a parameter, counted without the receiver; by it overloads are told apart.</summary>
    public TypeKey? Parameter(int index) => index >= 0 && index < method.Parameters.Count ? method.Parameters[index] : null;

    /// <summary>The declared type of the parameter that takes an argument.</summary>
    public TypeKey? ParameterOf(int index) => Parameter(index - (method.IsStatic || method.Name == ".ctor" ? 0 : 1));

    /// <summary>Stores a value where an argument by reference leads to.</summary>
    public void Out(int index, object? value)
    {
        if (this[index] is Cell cell)
            machine.Write(cell.Items, cell.Index, ValueCopies.Of(value));
    }

    public AnswerIsOpen Unknown() => new($"what '{method.Name}' does depends on something that isn't known");

    private static ThrownByCode Missing() => new("System.ArgumentNullException", "A value that must be given is null.");

    private string Observed(TextValue text, string known)
    {
        machine.Calls.Observe(text);
        return known;
    }
}
