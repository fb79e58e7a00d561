namespace Condyle.Analyzers.Reading;

/// <summary>A delegate: one of the user's functions with what it captured, or a method of Condyle or the framework.</summary>
internal sealed class FunctionValue(Func<Machine, object?[], object?> call)
{
    /// <summary>Makes the frame of a call, where it is one of the user's functions that can run on the machine's own stack.</summary>
    public Func<object?[], Frame>? Start { get; init; }

    /// <summary>Calls it with its arguments and gives back what it returns.</summary>
    public object? Invoke(Machine machine, params object?[] arguments) => call(machine, arguments);
}
