using Condyle.Evaluation;
using Condyle.Model;

namespace Condyle.Runtime.Matching;

/// <summary>Sets the goal, the pole and what else the animator has of a two-bone IK.</summary>
/// <remarks>
/// The goal takes the tip's turn, and the place where <see cref="TwoBoneGoal"/> makes the tip come to where it is. The plane is turned as <see cref="PlanePlace"/> says, by the pole or, where there is none, by the limb's dial.
/// </remarks>
internal sealed class TwoBoneMatch(LimbPlan limb, TwoBoneLimb solver, LivePose pose, IReadOnlyList<Affine3d> wanted) : ISolverMatch
{
    private TwoBoneTask Task => solver.Solved.TaskIn(pose.Frames);

    public void Reach()
    {
        var (task, tip) = (Task, limb.Joints[2].Solved);
        var toTip = wanted[2].Origin - task.Root;
        var bones = ((wanted[1].Origin - wanted[0].Origin).Length, (wanted[2].Origin - wanted[1].Origin).Length);
        var (distance, stretch) = TwoBoneGoal.For(task, toTip.Length, bones, solver.Stretch is not null);
        if (solver.Stretch is { } given && stretch != task.Stretch)
            pose.Set(given, ValueFor(task.Options.Stretch, stretch));
        var turn = pose.CarriedFromRest(tip, wanted[2].Rotation, solver.Goal.Node);
        pose.Place(solver.Goal, Affine3d.Rigid(task.Root + ((toTip.Direction ?? Vector3d.Zero) * distance), turn));
    }

    public void Settle()
    {
        Reach(); // once more, to be noted
        var task = Task;
        var carried = task.Carried;
        var middle = Affine3d.Rigid(task.Root + task.BonesIn(carried).First, Quaterniond.Identity);
        var angle = PlanePlace.TurnOf([Affine3d.Rigid(task.Root, task.TurnsIn(carried)[0]), middle], [wanted[0], wanted[1]], carried.Line, task.Unsolved.Length);
        if (solver.Pole is { } pole)
        {
            var plane = carried.Turned(angle - task.PlaneTurn);
            pose.Move(pole, PlanePlace.PoleFor(solver.Copy, pole.Node, plane, task.Root, wanted[1].Origin, task.Unsolved.Length, pose.Frames.Rest));
        }
        else if (solver.Solved.Pole is null && task.Options.Turner is RigDial dial)
            pose.Set(dial, Inside(dial, task.Options.Unturned + (angle * Compare.DegreesPerRadian)));
    }

    public IEnumerable<MatchNote> Notes() => new TwoBoneDiagnosis(limb, solver, wanted, pose.Frames).Notes();

    // A whole turn more or less is the same plane.
    private static double Inside(RigDial dial, double degrees)
    {
        var range = DialRange.Of(dial);
        var turns = new[] { degrees, degrees - 360, degrees + 360 };
        return turns.MinBy(value => Math.Max(0, Math.Max(range.From - value, value - range.To)));
    }

    /// <summary>The value of the one switch in a weight at which it has a value.</summary>
    private static double ValueFor(WeightPolynomial weight, double wanted)
    {
        var (none, one) = (weight.At(_ => 0), weight.At(_ => 1));
        return (wanted - none) / (one - none);
    }
}
