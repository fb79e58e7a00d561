using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.Operations;

namespace Condyle.Analyzers.Reading;

/// <summary>What comes apart into several targets: they are all evaluated before the value is.</summary>
internal sealed partial class Lowerer
{
    /// <param name="Single">Where a part goes that comes apart no further.</param>
    /// <param name="Type">The type of what goes there.</param>
    /// <param name="Parts">Where its own parts go.</param>
    private sealed record PartTarget(Target? Single, TypeKey Type, IReadOnlyList<PartTarget> Parts);

    private void AssignParts(IDeconstructionAssignmentOperation assignment)
    {
        var targets = Prepared(assignment.Target);
        Value(assignment.Value);
        if (assignment.Type is { IsTupleType: false } || assignment.Value.Type is { IsTupleType: false })
            Emit(new PartsOf(KeyOf(assignment.Value)));
        else
            Emit(new CopyValue());
        Emit(new Duplicate());
        Take(targets);
    }

    private PartTarget Prepared(IOperation target)
    {
        PartTarget? made = null;
        Inside(target, (lowerer, here) => made = lowerer.PreparedHere(here), leaves: 0);
        return made ?? new PartTarget(TargetOf(null), KeyOf(target), []);
    }

    private PartTarget PreparedHere(IOperation target)
    {
        if (target is IDeclarationExpressionOperation { Expression: var declared })
            target = declared;
        if (target is ITupleOperation tuple)
            return new PartTarget(null, KeyOf(target), [.. tuple.Elements.Select(Prepared)]);
        var single = TargetOf(target);
        single.Prepare();
        return new PartTarget(single, KeyOf(target), []);
    }

    /// <summary>Stores the value on the stack, or its parts.</summary>
    private void Take(PartTarget target)
    {
        if (target.Single is { } single)
        {
            if (IsNumber(target.Type))
                Emit(new ConvertNumber(target.Type, false));
            single.Store();
            return;
        }

        Emit(new PartsOf(new TypeKey("tuple", TypeShape.Tuple)));
        Emit(new SplitTuple(target.Parts.Count));
        var parts = target.Parts.Select(_ => Temporary()).ToList();
        foreach (var part in Enumerable.Reverse(parts))
            Emit(new StoreSlot(part));
        for (var i = 0; i < parts.Count; i++)
        {
            Emit(new LoadSlot(parts[i]));
            Take(target.Parts[i]);
        }
    }
}
