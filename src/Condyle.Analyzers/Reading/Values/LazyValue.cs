namespace Condyle.Analyzers.Reading;

/// <summary>A <c>Lazy</c>: a value that is made when it is first asked for.</summary>
internal sealed class LazyValue(Func<Machine, object?> make) : IFrameworkValue
{
    public string TypeName => "System.Lazy";

    // Whether it is made, and what was made.
    private readonly object?[] state = [false, null];

    public bool IsMade => state[0] is true;

    /// <summary>One that is there already.</summary>
    public static LazyValue Of(object? value) => new(_ => null) { state = { [0] = true, [1] = value } };

    public object? Value(Machine machine)
    {
        if (state[0] is OpenValue)
        {
            // It may be made now, or have been made before.
            machine.AnyNumberOfTimes(() => machine.Lost.Add(make(machine)));
            machine.Lost.Add(state[1]);
            return OpenValue.Any;
        }

        if (!IsMade)
        {
            machine.Write(state, 1, make(machine));
            machine.Write(state, 0, true);
        }

        return state[1];
    }
}
