namespace Condyle.Rules;

/// <summary>CDY8003: a goal that its chain doesn't reach at rest moves the limb before anybody has touched it.</summary>
internal sealed class GoalOutOfReach : EvaluatedRule
{
    public override string Id => "CDY8003";

    public override string Title => "Goal out of reach at rest";

    public override Severity Severity => Severity.Warning;

    public override string Fix => "place the goal at the tip";

    public override IEnumerable<Finding> Check(CheckedRig rig)
    {
        if (rig.Evaluated is not { } evaluated)
            yield break;
        foreach (var (solver, reach) in evaluated.GoalsMissed.OrderByDescending(missed => missed.Reach.Missing))
        {
            solver.Goal.TryKnown(out var goal);
            var (root, tip) = (solver.Copy!.Joints[0], solver.Copy.Joints[^1]);
            yield return new Finding(
                this,
                solver,
                reach.IsTooNear
                    ? $"With '{goal!.Name}' at rest, {solver.Copy.Title} can't fold up enough to reach it: it is {Lengths.Of(reach.Missing)} nearer to '{root.Name}' than the bones can bring '{tip.Name}', so the limb is folded before anybody has moved anything. Place '{goal.Name}' at the chain's tip."
                    : $"With '{goal!.Name}' at rest, {solver.Copy.Title} is {Lengths.Of(reach.Missing)} too short to reach it: the limb is pulled straight before anybody has moved anything, and '{tip.Name}' stays behind. Place '{goal.Name}' at the chain's tip.",
                solver.Place)
            {
                ActsOn = goal,
                Related = [goal.Place],
                Repairs = Placing.Of(goal, solver, (solver.Id, 0), $".{nameof(Copy.Tip)}", "the chain's tip", rig),
            };
        }
    }
}
