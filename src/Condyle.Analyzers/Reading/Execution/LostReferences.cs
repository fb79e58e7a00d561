using Condyle.Model;

namespace Condyle.Analyzers.Reading;

/// <summary>
/// What values that aren't known may stand for: what lay where two ways met with something different, or in a collection of which it isn't known any more
/// what it holds. Whoever changes something through an unknown value may change any of these.
/// </summary>
internal sealed class LostReferences(Machine machine)
{
    private const int Depth = 4;
    private const string What = "something unknown";
    private const string Why = "which of several things that is isn't known";
    private readonly List<object> values = [];
    private readonly HashSet<object> seen = [];
    private readonly Dictionary<int, int> touched = [];

    public void Add(object? value)
    {
        if (value is ObjectValue { Type.IsStruct: false } or ICollectionValue or IStretch or Cell or TupleValue or FunctionValue or IHandle && seen.Add(value))
            values.Add(value);
    }

    /// <summary>Something was stored through a value that isn't known.</summary>
    public void Change() => UnknownCode.Touch(machine, [.. values.Where(value => value is not FunctionValue)], machine.Here, What, Why);

    /// <summary>Code was called of which it isn't known what it is, with all that it may hold.</summary>
    public void Call() => UnknownCode.Touch(machine, [.. values], machine.Here, What, Why);

    /// <summary>Something was said of an element of the rig that isn't known.</summary>
    public void Say()
    {
        for (var i = 0; i < values.Count; i++)
            Touch(values[i], Depth);
    }

    // What is open once stays so, unless a way that was only tried is forgotten again.
    private bool IsTouched(int id) => touched.TryGetValue(id, out var at) && at < machine.Draft.Log.Count && machine.Draft.Log[at] is Touched said && said.Element == id;

    private void Touch(object? value, int depth)
    {
        machine.Budget.Spend();
        switch (value)
        {
            case IHandle handle:
                if (!Handles.IsMade(handle) || IsTouched(handle.Id))
                    break;
                touched[handle.Id] = machine.Draft.Log.Count;
                machine.Draft.Record(new Touched(machine.Places.At(machine.Here), handle.Id));
                break;
            case Cell cell:
                Touch(cell.Items[cell.Index], depth);
                break;
            case CollectionValue collection when depth > 0:
                Each(collection.Items());
                break;
            case IStretch items when depth > 0:
                Each(items.Now());
                break;
            case TupleValue tuple when depth > 0:
                Each(tuple.Items);
                break;
            case ObjectValue own when depth > 0:
                Each(own.Fields);
                break;
        }

        void Each(IEnumerable<object?> parts)
        {
            try
            {
                foreach (var part in parts)
                    Touch(part, depth - 1);
            }
            catch (SequenceIsOpen)
            {
                // In which order they lie doesn't matter; a collection that doesn't tell holds what was found elsewhere.
            }
        }
    }
}
