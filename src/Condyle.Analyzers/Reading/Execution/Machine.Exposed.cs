namespace Condyle.Analyzers.Reading;

/// <summary>
/// What unknown code can run of the user's through the values that it is handed: an object's text, its equality, its properties, what it implements for others;
/// the code that makes the items of a query. Each may be run any number of times.
/// </summary>
internal sealed partial class Machine
{
    private const int ItemsMade = 256;

    private readonly HashSet<object> exposed = [];

    /// <summary>Runs what others can run of a value.</summary>
    /// <returns>The items that it makes.</returns>
    public IReadOnlyList<object?> Expose(object? value)
    {
        var items = new List<object?>();
        var key = (value as ObjectValue)?.Type ?? value;
        if (value is not (ObjectValue or SequenceValue or LazyValue) || exposed.Count >= Limits.HandedOn || !exposed.Add(key!))
            return items;
        try
        {
            foreach (var body in value is ObjectValue own ? Program.ExposedMembersOf(own.Type) : [])
                AnyNumberOfTimes(() => Call(body, value, [.. Enumerable.Repeat<object?>(OpenValue.Any, body.ParameterCount)]));
            if (value is LazyValue lazy)
                AnyNumberOfTimes(() => items.Add(lazy.Value(this)));
            else if (value is SequenceValue || Program.EnumeratorOf(((ObjectValue)value).Type) is not null)
                AnyNumberOfTimes(() => Enumerate(value, items));
            return items;
        }
        finally
        {
            exposed.Remove(key!);
        }
    }

    // Nobody knows how many of the items are asked for, and there may be no end of them.
    private void Enumerate(object value, List<object?> items)
    {
        items.Clear();
        foreach (var item in Sequences.Of(value, this) ?? [])
        {
            items.Add(item);
            if (items.Count < ItemsMade)
                continue;
            Lost.Add(value);
            Lost.Call();
            break;
        }
    }
}
