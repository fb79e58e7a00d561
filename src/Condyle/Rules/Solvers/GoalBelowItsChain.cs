using Condyle.Model;

namespace Condyle.Rules;

/// <summary>CDY7006: a goal or a pole that hangs below the chain that it leads needs that chain first.</summary>
internal sealed class GoalBelowItsChain : EvaluatedRule
{
    /// <summary>How many parents are looked at in one rig; deeper ones than that are left unlooked at.</summary>
    private const int MostSteps = 100_000;

    public override string Id => "CDY7006";

    public override string Title => "Goal or pole below its own chain";

    public override Severity Severity => Severity.Error;

    public override IEnumerable<Finding> Check(CheckedRig rig)
    {
        if (rig.Model.IsPart)
            yield break; // whoever calls it may hang the goal elsewhere
        var steps = 0;
        var blended = BlendedFrom(rig.Model);
        foreach (var solver in rig.Model.TwoBones.Cast<RigSolver>().Concat(rig.Model.ManyBones))
        {
            if (solver.Copy is not { IsUnknown: false } copy)
                continue;
            var chain = new HashSet<RigNode>(copy.Joints.Concat(blended[copy]));
            foreach (var (end, word) in new[] { (solver.Goal, "goal"), (solver.Pole, "pole") })
            {
                if (!end.TryKnown(out var node) || node is null || WayUp(node, chain, ref steps) is not { } way)
                    continue;
                yield return new Finding(
                    this,
                    solver,
                    $"'{node.Name}' is the {word} of {solver.Title} and hangs below it: {string.Join(" under ", way.Select(step => step.Title))}. Each needs the other first, so the rig can't be evaluated. Hang '{node.Name}' under a node outside the limb.",
                    node.ParentPlace == PlaceId.None ? solver.Place : node.ParentPlace)
                {
                    ActsOn = node,
                    Related = [solver.Place],
                };
                break;
            }
        }
    }

    /// <summary>The joints that are blended from each copy: they stand where it does.</summary>
    private static ILookup<RigCopy, RigNode> BlendedFrom(RigModel model) => (
        from blend in model.Blends
        where blend.Chain?.Joints is not null && !blend.SourcesAreOpen
        from source in blend.Sources
        where source.Copy is not null
        from joint in blend.Chain!.Joints!
        select (source.Copy, joint)).ToLookup(pair => pair.Copy!, pair => pair.joint);

    private static List<RigNode>? WayUp(RigNode node, HashSet<RigNode> chain, ref int steps)
    {
        var way = new List<RigNode>();
        foreach (var at in node.Above.Prepend(node))
        {
            way.Add(at);
            if (chain.Contains(at))
                return way;
            if (steps++ >= MostSteps)
                return null;
        }

        return null;
    }
}
