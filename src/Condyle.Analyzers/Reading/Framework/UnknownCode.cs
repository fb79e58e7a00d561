using Condyle.Model;

namespace Condyle.Analyzers.Reading;

/// <summary>What code that isn't read can do: anything to what it was handed, and nothing else.</summary>
internal static class UnknownCode
{
    /// <summary>Why it isn't known what a delegate does.</summary>
    public const string NotKnownWhich = "which code it runs isn't known";

    private const int Depth = 4;
    private const string NoSource = "its source isn't part of this project";

    /// <param name="machine">Runs the code around it.</param>
    /// <param name="handed">What it is handed.</param>
    /// <param name="at">Where.</param>
    /// <param name="what">What is called.</param>
    /// <param name="why">Why it isn't known what that does.</param>
    public static void Touch(Machine machine, IEnumerable<object?> handed, Origin at, string what, string why = NoSource)
    {
        foreach (var value in handed)
        {
            machine.Lost.Add(value);
            Touch(machine, value, at, (what, why), Depth);
        }
    }

    private static void Touch(Machine machine, object? value, Origin at, (string Name, string Why) what, int depth)
    {
        machine.Budget.Spend();
        switch (value)
        {
            case TextValue text:
                machine.Calls.Observe(text);
                break;
            case RigDraft draft:
                machine.Miss(draft, at, $"{what.Name} is handed the rig, but {what.Why}");
                break;
            case IHandle handle when Handles.IsMade(handle):
                machine.Draft.Record(new Touched(machine.Places.At(at), handle.Id));
                break;
            case IStretch items:
                Open(items.Items);
                break;
            case ObjectValue own:
                machine.Expose(own);
                if (!own.Type.IsStruct)
                    Open(own.Fields);
                break;
            case SequenceValue or LazyValue when depth > 0:
                foreach (var item in machine.Expose(value))
                    Touch(machine, item, at, what, depth - 1);
                break;
            case TupleValue tuple when depth > 0:
                foreach (var item in tuple.Items)
                    Touch(machine, item, at, what, depth - 1);
                break;
            case Cell cell:
                Touch(machine, cell.Items[cell.Index], at, what, depth - 1);
                machine.Write(cell.Items, cell.Index, OpenValue.Any);
                break;
            case ICollectionValue collection:
                foreach (var item in Held(collection))
                    Touch(machine, item, at, what, depth - 1);
                if (collection is CollectionValue { IsFixed: true })
                    break;
                machine.Journal.Changing(collection);
                collection.IsOpen = true;
                break;
            case OpenSequence sequence:
                machine.AnyNumberOfTimes(() => sequence.Item());
                break;
            case FunctionValue function:
                // It may be called any number of times, now and later.
                var saysMore = machine.CanGetAtTheRig(function);
                var isRead = machine.RunHanded(function);
                machine.Keep(function);
                foreach (var reached in function.Reaches.Where(_ => depth > 0))
                    Touch(machine, reached, at, what, depth - 1);
                // Called later it may say of the rig what it doesn't say now.
                if (!isRead || saysMore)
                    machine.Lose(at, $"{what.Name} is handed a function and may call it");
                break;
        }

        List<object?> Held(ICollectionValue collection) => depth == 0 || collection is not CollectionValue { IsOpen: false } own ? [] : Sequences.ListOf(own, machine) ?? [];

        void Open(object?[] items)
        {
            if (depth == 0)
                return;
            for (var i = 0; i < items.Length; i++)
            {
                Touch(machine, items[i], at, what, depth - 1);
                machine.Write(items, i, OpenValue.Any);
            }
        }
    }
}
