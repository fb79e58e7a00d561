using Condyle.Evaluation;
using Condyle.Model;

namespace Condyle.Runtime.Compilation;

/// <summary>Plans the solvers of copies.</summary>
internal static class SolverPlan
{
    /// <summary>The writer of a two-bone IK; none where there is nothing to reach, or nothing that two bones could.</summary>
    public static CopyWriter? Of(RigTwoBone solver, RigPlan plan, RestPose rest)
    {
        if (Ends(solver, plan) is not var (copy, goal, pole) || copy.Joints.Count != 3)
            return null;
        var options = TwoBoneOptions.Of(solver, rest);
        return new TwoBoneWriter(solver.Title, Joints(copy, plan), goal, pole)
        {
            Bend = RestBend.Of(copy, pole?.Node, rest),
            TipInGoal = TipInGoal(copy, goal.Node, rest),
            Options = options,
            Turner = options.Turner is { } turner ? plan.Inputs.SlotOf(turner.Id) : null,
            Measure = options.Turner is { } value ? plan.Measures.Of(value) : null,
        };
    }

    /// <summary>The writer of a many-bone IK; none where there is nothing to reach or no bone.</summary>
    public static CopyWriter? Of(RigManyBone solver, RigPlan plan, RestPose rest) => Ends(solver, plan) is not var (copy, goal, pole) || copy.Joints.Count < 2
        ? null
        : new ManyBoneWriter(solver.Title, Joints(copy, plan), goal, pole)
        {
            Bend = RestBend.Of(copy, pole?.Node, rest),
            TipInGoal = TipInGoal(copy, goal.Node, rest),
            Options = ManyBoneOptions.Of(solver, rest),
        };

    /// <summary>The writer of a curve; none where the sentence is unfinished.</summary>
    public static CopyWriter? Of(RigCurve curve, RigPlan plan, RestPose rest) => CurveRest.Of(curve, rest) is { } atRest
        ? new CurveChainWriter(curve.Title, Joints(curve.Copy!, plan), [.. atRest.Nodes.Select(node => plan[node])], atRest)
        : null;

    private static (RigCopy Copy, PlannedNode Goal, PlannedNode? Pole)? Ends(RigSolver solver, RigPlan plan)
    {
        var goal = Facts.Known(solver.Goal, $"The goal of {solver.Title}");
        var pole = Facts.Known(solver.Pole, $"The pole of {solver.Title}");
        return goal is null || solver.Copy is not { } copy ? null : (copy, plan[goal], pole is null ? null : plan[pole]);
    }

    private static PlannedNode[] Joints(RigCopy copy, RigPlan plan) => [.. copy.Joints.Select(joint => plan[joint])];

    private static Quaterniond TipInGoal(RigCopy copy, RigNode goal, RestPose rest) =>
        rest.WorldOf(goal).Rotation.Inverse * rest.WorldOf(copy.Joints[^1]).Rotation;
}
