using Condyle.Model;

namespace Condyle.Analyzers.Reading;

/// <summary>
/// What is done through a value of which it isn't known what it is. What is stored through it may be stored in anything of that kind that the code can get at.
/// Code that is called through it can be that of what got lost, where two ways met with something different or in a collection that isn't known any more: it
/// reaches what that reaches. And what is said of it may be said of any element of the rig that got lost.
/// </summary>
internal sealed class LostReferences(Machine machine)
{
    private readonly HashSet<object> values = [];
    private readonly Dictionary<int, int> touched = [];

    public void Add(object? value)
    {
        if (value is ObjectValue or ICollectionValue or IStretch or Cell or TupleValue or FunctionValue or TaskValue or SequenceValue or LazyValue or IHandle)
            values.Add(value);
    }

    public void AddAll(IEnumerable<object?> lost)
    {
        foreach (var value in lost)
            Add(value);
    }

    /// <summary>Something was stored in a field.</summary>
    public void Store(string field, object? value)
    {
        foreach (var own in Live().OfType<ObjectValue>())
        {
            if (own.Type.IndexOf(field) is >= 0 and var index)
                Open(own.Fields, index);
        }

        Add(value);
    }

    /// <summary>Something was stored in an item.</summary>
    public void StoreItem(object? value)
    {
        foreach (var items in Live().OfType<IStretch>())
            Elements.Lose(items, machine);
        Add(value);
    }

    /// <summary>A collection was changed by one of its methods.</summary>
    public void Change(MethodRef method, IEnumerable<object?> arguments)
    {
        foreach (var collection in Live().OfType<ICollectionValue>())
        {
            if (FrameworkTypes.NameOf(collection) is { } type && FrameworkTable.Find(type, method.Name) is { Changes: true })
                Open(collection);
        }

        AddAll(arguments);
    }

    /// <summary>Something was stored in a place, which may be any.</summary>
    public void StoreAnywhere() => Open(Live());

    /// <summary>Code was called, with all that it may hold.</summary>
    public void Call()
    {
        if (!values.Any(value => value is FunctionValue or ObjectValue or SequenceValue or LazyValue or ICollectionValue or IStretch or TupleValue))
            return;
        var reached = Reach.From([.. values, .. machine.Statics], machine.Budget);
        Open(reached);
        foreach (var handle in reached.OfType<IHandle>())
            Touch(handle);
        // What makes a query's items can't be seen from here; who has the rig can say anything.
        if (reached.Any(value => value is SequenceValue or LazyValue or RigDraft))
        {
            Open(Live());
            machine.Lose(machine.Here, "which of several pieces of code runs here isn't known, and each may say something of the rig");
        }
    }

    /// <summary>Items were asked of something: where that may be a query or an iterator, its code has run.</summary>
    public void Enumerate()
    {
        if (values.Any(value => value is SequenceValue))
            Call();
    }

    /// <summary>Something was said of an element of the rig.</summary>
    public void Say()
    {
        foreach (var handle in Reach.From(values, machine.Budget).OfType<IHandle>())
            Touch(handle);
    }

    // Where nothing got lost, what isn't known comes from elsewhere and is none of what the code has.
    private IReadOnlyCollection<object> Live() => values.Count == 0 ? [] : Reach.From([.. machine.Roots, .. values], machine.Budget);

    /// <summary>Opens all that lies in some values.</summary>
    public void Open(IEnumerable<object> reached)
    {
        foreach (var value in reached)
        {
            switch (value)
            {
                case ObjectValue own:
                    Open(own.Fields);
                    break;
                case object?[] variable:
                    Open(variable);
                    break;
                case Cell cell:
                    Open(cell.Items, cell.Index);
                    break;
                case IStretch items:
                    Elements.Lose(items, machine);
                    break;
                case ICollectionValue collection:
                    Open(collection);
                    break;
            }
        }
    }

    private void Open(object?[] items)
    {
        for (var i = 0; i < items.Length; i++)
            Open(items, i);
    }

    private void Open(object?[] items, int index)
    {
        Add(items[index]);
        machine.Write(items, index, OpenValue.Any);
    }

    private void Open(ICollectionValue collection)
    {
        if (collection is CollectionValue { IsFixed: true })
            return;
        Add(collection);
        machine.Journal.Open(collection);
    }

    /// <summary>Something may have been said of an element. What is open once stays so, unless a way that was only tried is forgotten again.</summary>
    public void Touch(IHandle handle)
    {
        if (!Handles.IsMade(handle) || (touched.TryGetValue(handle.Id, out var at) && at < machine.Draft.Log.Count && machine.Draft.Log[at] is Touched said && said.Element == handle.Id))
            return;
        touched[handle.Id] = machine.Draft.Log.Count;
        machine.Draft.Record(new Touched(machine.Places.At(machine.Here), handle.Id));
    }
}
