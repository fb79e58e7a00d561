using Condyle.Evaluation;
using Condyle.Model;

namespace Condyle.Rules;

/// <summary>CDY7003: a chain that is straight at rest needs to be told to which side it bends.</summary>
internal sealed class StraightChainWithoutBend : EvaluatedRule
{
    public override string Id => "CDY7003";

    public override string Title => "Straight chain that isn't told to which side it bends";

    public override Severity Severity => Severity.Warning;

    public override IEnumerable<Finding> Check(CheckedRig rig)
    {
        foreach (var (chain, solver, pole, _) in In(rig))
        {
            var middle = chain.Copy.Joints[Bend.MiddleOf(chain.Joints.Count)];
            yield return Of(chain, pole is null
                ? $"The {chain.Copy.Title} is straight at rest, and {solver.Title} has no pole: to which side '{middle.Name}' bends isn't said, so it may bend the wrong way. Say .Bending(...) of the chain with the direction of its bend, or give the solver a pole to face."
                : $"The {chain.Copy.Title} is straight at rest, so it has no pole point, and where its pole '{pole.Name}' stands can't be worked out: the rig can't be evaluated. Say .Bending(...) of the chain with the direction of its bend.");
        }
    }

    /// <summary>The straight chains without a bend, each with its solver, which has no pole or one that stands at the chain's own pole point.</summary>
    public static IEnumerable<(SolvedChain Chain, RigSolver Solver, RigNode? Pole, RigPolePoint? Spot)> In(CheckedRig rig)
    {
        if (rig.Model.IsPart)
            yield break; // whoever calls it may say more of the chain
        foreach (var chain in rig.SolvedChains)
        {
            if (chain.By is not RigSolver solver || chain.Joints.Count < 3 || !solver.Pole.TryKnown(out var pole) || !IsUndefined(chain))
                continue;
            if (pole is null)
                yield return (chain, solver, null, null);
            else if (pole.Placement.TryKnown(out var placement) && placement is AtSpot { Spot: RigPolePoint { Chain: { } spotted } spot } && spotted == chain.Copy.Chain)
                yield return (chain, solver, pole, spot);
        }
    }

    private static bool IsUndefined(SolvedChain chain) =>
        chain.Length > 0
        && Bend.Of(chain.Root, chain.Middle, chain.Tip) is null
        && chain.Copy.Chain.Bend.TryKnown(out var declared)
        && (declared is not { } towards || Bend.Declared(towards, Bend.LineOf(chain.Root, chain.Middle, chain.Tip)) is null);

    private Finding Of(SolvedChain chain, string message) => new(this, chain.By, message, chain.By.Place)
    {
        ActsOn = chain.Copy.Chain.Joints![0],
        Related = [chain.Copy.Chain.Place, chain.Copy.Place],
    };
}
