using Condyle.Model;

namespace Condyle.Evaluation;

/// <summary>What a two-bone IK finds in a pose: its copy unsolved, how that bends at rest, and how far its tip goes towards the goal.</summary>
internal sealed class TwoBoneTask
{
    private readonly RigTwoBone solver;
    private readonly PoseFrames frames;
    private readonly Affine3d goalWorld;
    private readonly RigNode goal;
    private readonly RigNode? pole;

    private TwoBoneTask(RigTwoBone solver, RigNode goal, RigNode? pole, PoseFrames frames)
    {
        (this.solver, this.goal, this.pole, this.frames) = (solver, goal, pole, frames);
        var copy = solver.Copy!;
        Options = TwoBoneOptions.Of(solver, frames.Rest);
        Unsolved = UnsolvedCopy.Of(copy, frames);
        Near = BendPlane.Near * Unsolved.Length;
        goalWorld = frames.WorldOf(goal);
        ToGoal = goalWorld.Origin - Root;
        PlaneTurn = Options.Turner is { } turner ? (frames.ValueOf(turner) - Options.Unturned) * (Math.PI / 180) : 0;
        Before = RestBend.Of(copy, pole, frames.Rest).In(Unsolved.Frames[0]);
        Stretch = Math.Min(Math.Max(frames.ValueOf(Options.Stretch), 0), 1);
        Reach = ReachOf(RestDistance.Settle(ToGoal.Length, Unsolved.Reach, Unsolved.Length + Root.Length + goalWorld.Origin.Length), Stretch);
    }

    public TwoBoneOptions Options { get; }

    public UnsolvedCopy Unsolved { get; }

    /// <summary>Where the copy's root joint stands, solved or not.</summary>
    public Vector3d Root => Unsolved.Frames[0].Origin;

    /// <summary>Nearer than this, a goal is at the root and a pole on the line.</summary>
    public double Near { get; }

    public Vector3d ToGoal { get; }

    /// <summary>The plane in which the copy bends unsolved.</summary>
    public BendPlane Before { get; }

    /// <summary>By how much the dial or the measured angle turns the plane, in radians.</summary>
    public double PlaneTurn { get; }

    /// <summary>The weight by which the bones lengthen, from 0 to 1.</summary>
    public double Stretch { get; }

    public TwoBoneReach Reach { get; }

    /// <summary>The plane towards the goal, without pole and turn: what the copy's parent makes of it.</summary>
    public BendPlane Carried => Before.Towards(ToGoal, null, Near);

    /// <summary>The plane in which the copy bends solved.</summary>
    public BendPlane After => Before.Towards(ToGoal, pole is null ? null : frames.WorldOf(pole).Origin - Root, Near).Turned(PlaneTurn);

    public static TwoBoneTask Of(RigTwoBone solver, RigNode goal, RigNode? pole, PoseFrames frames) => new(solver, goal, pole, frames);

    /// <summary>How far the tip goes towards a goal at a distance, with a weight of the stretch.</summary>
    public TwoBoneReach ReachOf(double distance, double stretch) => TwoBoneReach.Of(
        distance, Unsolved.Reach, Unsolved.Lengths[0], Unsolved.Lengths[1], Options.Softness * Unsolved.Length, stretch, Options.Most);

    /// <summary>The bones in a plane, before they lengthen. A copy that is straight but for a slight bend beside its plane leans to that bend by what it is at rest.</summary>
    public (Vector3d First, Vector3d Second) BonesIn(BendPlane after)
    {
        if (Reach.Distance == Unsolved.Reach)
        {
            var turn = after.Frame * Before.Frame.Inverse;
            return (turn.Rotate(Unsolved.Bones[0]), turn.Rotate(Unsolved.Bones[1]));
        }

        var (first, second) = (Unsolved.Lengths[0], Unsolved.Lengths[1]);
        var triangle = Reach.Distance <= Near && Math.Abs(first - second) <= Near
            ? new TwoBoneTriangle(0, first)
            : TwoBoneTriangle.Solve(first, second, Reach.Distance, Reach.Short);
        var beside = Unsolved.Bones[0].Across(Before.Line);
        var side = (after.Side * (triangle.Height + Vector3d.Dot(beside, Before.Side) - beside.Length)) + (after.Normal * Vector3d.Dot(beside, Before.Normal));
        var solved = (after.Line * triangle.Foot) + ((side.Direction ?? after.Side) * triangle.Height);
        return (solved, (after.Line * Reach.Distance) - solved);
    }

    /// <summary>The joints' rotations in the world in a plane.</summary>
    public Quaterniond[] TurnsIn(BendPlane after)
    {
        var (first, second) = BonesIn(after);
        return
        [
            Turned(after, first, 0),
            Turned(after, second, 1),
            goalWorld.Rotation * frames.Rest.WorldOf(goal).Rotation.Inverse * frames.Rest.WorldOf(solver.Copy!.Joints[2]).Rotation,
        ];
    }

    private Quaterniond Turned(BendPlane after, Vector3d bone, int at)
    {
        var hasLength = Unsolved.Lengths[at] > Near;
        return after.Bone(hasLength ? bone : Vector3d.Zero)
            * Before.Bone(hasLength ? Unsolved.Bones[at] : Vector3d.Zero).Inverse
            * Unsolved.Frames[at].Rotation;
    }
}
