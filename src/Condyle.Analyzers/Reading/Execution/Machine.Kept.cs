using Condyle.Model;

namespace Condyle.Analyzers.Reading;

/// <summary>Functions that were handed to code which isn't known: it may have kept them, to run them when it is called again or after the rig is defined.</summary>
internal sealed partial class Machine
{
    private readonly HashSet<FunctionValue> kept = [];

    public void Keep(FunctionValue function) => kept.Add(function);

    /// <summary>Code that isn't known is called: it may hold what was kept, by itself or in what it is handed.</summary>
    public void MayRunKept(MethodRef method, IEnumerable<object?> handed)
    {
        if (kept.Count > 0 && (!method.ContainingType.StartsWith("System.", StringComparison.Ordinal) || handed.Any(value => value is not (null or TextValue or IConvertible or EnumValue or IHandle))))
            MayRunKept();
    }

    /// <summary>Whether a function can say something of the rig, by what it holds or by what lies in static fields.</summary>
    public bool CanGetAtTheRig(FunctionValue function) => Reach.From([function, .. Statics], budget).Any(value => value is RigDraft or IHandle);

    /// <summary>What was kept may run now, with what its variables hold by now.</summary>
    public void MayRunKept()
    {
        if (kept.Count == 0 || handed.Count > 0)
            return;
        var reached = Reach.From(kept, budget);
        Lost.Open(reached);
        foreach (var handle in reached.OfType<IHandle>())
            Lost.Touch(handle);
        if (reached.Any(value => value is RigDraft))
            Draft.Record(new AllTouched());
    }
}
