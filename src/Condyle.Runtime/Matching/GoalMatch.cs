using Condyle.Evaluation;
using Condyle.Model;

namespace Condyle.Runtime.Matching;

/// <summary>Sets the goal, the pole and what else the animator has of a two-bone IK so that the solved copy stands as the turned one.</summary>
/// <remarks>
/// The goal takes the tip's turn, and the place where <see cref="GoalReach"/> makes the tip come to where it is. The plane is turned about the line from root to tip to the side
/// where the middle joint stands; where the limb is almost straight or bends backwards, so that this side says little or would turn the first bone over, to where that bone keeps its roll instead.
/// They are set for the moment after the switch: what carries the limb by then stands where it stood (<see cref="LimbCarriers"/>). The pole stands on that side, as far from the bend as at rest; a limb without one is turned by its dial. Not continuous where the limb turns almost straight or bends a quarter turn beside its plane.
/// </remarks>
internal sealed class GoalMatch
{
    /// <summary>A middle joint nearer to the line than this share of the limb's length leaves it almost straight.</summary>
    private const double AlmostStraight = 0.01;

    private const int Rounds = 4;

    private readonly LimbPlan limb;
    private readonly LivePose pose;
    private readonly IReadOnlyList<Affine3d> wanted;

    private GoalMatch(LimbPlan limb, LivePose pose)
    {
        (this.limb, this.pose) = (limb, pose);
        wanted = [.. limb.Joints.Select(joint => pose.Frames.WorldOf(joint.Turned).Frame)];
    }

    /// <param name="limb">The limb.</param>
    /// <param name="pose">The pose, whose controls are set.</param>
    /// <param name="switches">Whether the switch goes to the solved copy after it, so that what carries the limb must stay where it is by then.</param>
    public static LimbMatch Make(LimbPlan limb, LivePose pose, bool switches)
    {
        var (match, carriers) = (new GoalMatch(limb, pose), new LimbCarriers(limb, pose));
        return pose.While(switches ? limb.ShowsSolved : null, () =>
        {
            match.PlaceGoal();
            for (var round = 0; switches && round < Rounds && carriers.Keep(); round++)
                match.PlaceGoal(); // what follows the goal has moved, and with it the limb's root
            match.TurnPlane();
            var joints = Compare.Each(limb, match.wanted, joint => pose.Frames.WorldOf(joint.Solved));
            pose.Notes.AddRange(new GoalDiagnosis(limb, match.wanted, pose.Frames).Notes());
            return new LimbMatch(joints, pose.Notes);
        });
    }

    private void PlaceGoal()
    {
        var task = limb.TaskIn(pose.Frames);
        var (toTip, tip) = (wanted[2].Origin - task.Root, limb.Joints[2].Solved);
        var bones = ((wanted[1].Origin - wanted[0].Origin).Length, (wanted[2].Origin - wanted[1].Origin).Length);
        var (distance, stretch) = GoalReach.For(task, toTip.Length, bones, limb.Stretch is not null);
        if (limb.Stretch is { } given && stretch != task.Stretch)
            pose.Set(given, ValueFor(task.Options.Stretch, stretch));
        var rest = pose.Frames.Rest;
        var turn = wanted[2].Rotation * rest.WorldOf(tip).Rotation.Inverse * rest.WorldOf(limb.Goal.Node).Rotation;
        pose.Place(limb.Goal, Affine3d.Rigid(task.Root + ((toTip.Direction ?? Vector3d.Zero) * distance), turn));
    }

    private void TurnPlane()
    {
        var task = limb.TaskIn(pose.Frames);
        var carried = task.Carried;
        var angle = AngleIn(carried, task);
        if (limb.Pole is { } pole)
            pose.Move(pole, PoleFor(carried.Turned(angle - task.PlaneTurn), task));
        else if (limb.PoleNode is null && task.Options.Turner is RigDial dial)
            pose.Set(dial, Inside(dial, task.Options.Unturned + (angle * Compare.DegreesPerRadian)));
    }

    /// <summary>By how much the carried plane must turn about its line.</summary>
    private double AngleIn(BendPlane carried, TwoBoneTask task)
    {
        var off = wanted[0].Rotation * task.TurnsIn(carried)[0].Inverse;
        var byRoll = 2 * Math.Atan2(Vector3d.Dot(off.Vector, carried.Line), off.W);
        var (from, to) = (task.BonesIn(carried).First.Across(carried.Line), (wanted[1].Origin - task.Root).Across(carried.Line));
        var bySide = Math.Atan2(Vector3d.Dot(carried.Line, Vector3d.Cross(from, to)), Vector3d.Dot(from, to));
        var isBent = Math.Min(from.Length, to.Length) > AlmostStraight * task.Unsolved.Length;
        return isBent && Math.Cos(bySide - byRoll) > 0 ? bySide : byRoll;
    }

    private Vector3d PoleFor(BendPlane plane, TwoBoneTask task)
    {
        var rest = pose.Frames.Rest;
        var size = ChainLength.AtRest(limb.Solver.Copy!, rest) is > 0 and var length ? task.Unsolved.Length / length : 1;
        var away = (rest.WorldOf(limb.PoleNode!).Origin - rest.WorldOf(limb.Joints[1].Solved).Origin).Length * size;
        var middle = wanted[1].Origin - task.Root;
        return task.Root
            + (plane.Line * Vector3d.Dot(middle, plane.Line))
            + (plane.Side * (middle.Across(plane.Line).Length + Math.Max(away, task.Unsolved.Length / 10)));
    }

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
