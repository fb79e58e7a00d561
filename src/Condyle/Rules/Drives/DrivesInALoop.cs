using Condyle.Model;

namespace Condyle.Rules;

/// <summary>CDY3003: nodes that need each other in a loop can't be worked out.</summary>
internal sealed class DrivesInALoop : Rule
{
    public override string Id => "CDY3003";

    public override string Title => "Nodes that need each other in a loop";

    public override Severity Severity => Severity.Error;

    public override IEnumerable<Finding> Check(CheckedRig rig) => rig.Once(Loops).Select(loop => FindingOf([.. loop.Where(need => need.Verb.Length > 0)]));

    /// <summary>The sentences that are said of nodes in a loop.</summary>
    public static IEnumerable<RigElement> SentencesIn(CheckedRig rig) => rig.Once(Loops).SelectMany(loop => loop).Select(need => need.By);

    private static IEnumerable<IReadOnlyList<NodeNeed>> Loops(CheckedRig rig)
    {
        // What has been worked out has no loop.
        if (rig.Evaluated is not null)
            yield break;
        var (model, moves) = (rig.Model, rig.Moves);
        var told = new HashSet<int>();
        var atRest = new NeedLoops(model, NodeNeed.AtRest);
        var moving = new NeedLoops(model, (node, channels) => NodeNeed.Moving(node, channels, moves));
        foreach (var loop in atRest.Find().Concat(moving.Find()))
        {
            var nodes = loop.Select(need => need.Of.Id).Distinct().ToList();
            if (nodes.Exists(told.Contains) || IsGoalBelowItsChain(loop) || loop.Select(need => need.Scope).Where(scope => scope != 0).Distinct().Count() > 1)
                continue;
            told.UnionWith(nodes);
            yield return loop;
        }
    }

    // Of a goal or a pole that hangs below the chain that it leads, the rule on solvers speaks.
    private static bool IsGoalBelowItsChain(IReadOnlyList<NodeNeed> loop) =>
        loop.Any(need => need.By is RigSolver) && loop.All(need => need.By is RigSolver or RigNode or RigBlend { Chain: not null });

    private Finding FindingOf(List<NodeNeed> loop)
    {
        // The sentence said last closed the loop; the path begins there.
        var closing = loop.FindIndex(need => need.Said == loop.Max(other => other.Said));
        List<NodeNeed> path = [.. loop.Skip(closing), .. loop.Take(closing)];
        var said = path[0];
        return new Finding(
            this,
            said.By,
            $"None of these can be worked out before the next: {string.Join(", ", path.Select(need => $"{need.Of.Title} {need.Verb} {need.Node.Title}"))}. So the rig can't be evaluated at all. Hang, place or drive one of them by a node outside the loop.",
            said.Place)
        {
            ActsOn = said.Of,
            Related = [.. path.Skip(1).Select(need => need.Place).Where(place => place != said.Place && place != PlaceId.None).Distinct()],
        };
    }
}
