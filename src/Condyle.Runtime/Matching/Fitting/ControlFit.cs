using Condyle.Evaluation;
using Condyle.Model;

namespace Condyle.Runtime.Matching.Fitting;

/// <summary>Where a node should stand.</summary>
/// <param name="Node">The node.</param>
/// <param name="Frame">Its frame in the world.</param>
/// <param name="Turns">Whether its turn counts, and not its place alone.</param>
internal sealed record FitTarget(RigNode Node, Affine3d Frame, bool Turns);

/// <summary>
/// Sets the unlocked moves and turns of a few controls, and the switch by which a chain stretches, so that nodes stand where they should as nearly as can be:
/// the squares of what each is off have the least sum, where 0.01 mm counts as much as 0.01°.
/// </summary>
/// <remarks>It starts from the controls as they are set. Limits may be passed.</remarks>
internal sealed class ControlFit
{
    /// <summary>By which a channel is changed to find a slope, in metres and radians.</summary>
    private const double Step = 1e-6;

    /// <summary>What is off by this share of what is allowed is near enough: a float holds no more.</summary>
    private const double Enough = 0.01;

    private static readonly Channels[] Moves = [Channels.MoveX, Channels.MoveY, Channels.MoveZ];

    private readonly LivePose pose;
    private readonly IReadOnlyList<FitTarget> targets;
    private readonly Pose changed;
    private readonly List<Fitted> controls = [];
    private readonly RigSwitch? stretch;
    private readonly double stretched;
    private int arguments;

    private ControlFit(LivePose pose, IEnumerable<Handle> handles, RigSwitch? stretch, IReadOnlyList<FitTarget> targets)
    {
        (this.pose, this.stretch, this.targets) = (pose, stretch, targets);
        changed = pose.Copy();
        foreach (var handle in handles)
        {
            var locked = pose.ControlOf(handle).Locked;
            Vector3d[] moves = handle.Moves ? [.. Moves.Index().Where(move => (locked & move.Item) == 0).Select(move => Vector3d.Unit((Axis)move.Index))] : [];
            controls.Add(new(handle, pose.SetOn(handle), moves, TakeArguments(moves.Length), (locked & Channels.Turn) == Channels.Turn ? null : TakeArguments(3)));
        }

        if (stretch is not null)
            (stretched, _) = (pose.ValueOf(stretch), TakeArguments(1));
    }

    /// <param name="pose">The pose, whose controls are set.</param>
    /// <param name="handles">The controls.</param>
    /// <param name="stretch">The switch; none: the chain doesn't stretch by one of its own.</param>
    /// <param name="targets">Where which nodes should stand.</param>
    /// <returns>The sum of the squares of what they are still off, in parts of what is allowed.</returns>
    public static double Run(LivePose pose, IEnumerable<Handle> handles, RigSwitch? stretch, IReadOnlyList<FitTarget> targets)
    {
        var fit = new ControlFit(pose, handles, stretch, targets);
        var (found, sum) = new LeastSquares(fit.Off, Step).Minimize(new double[fit.arguments], Enough * Enough);
        foreach (var control in fit.controls)
            pose.Set(control.Handle, fit.ChannelsAt(control, found));
        if (stretch is not null)
            pose.Set(stretch, fit.StretchAt(found));
        return sum;
    }

    private int TakeArguments(int count)
    {
        var first = arguments;
        arguments += count;
        return first;
    }

    /// <summary>What the nodes are off, in parts of what is allowed.</summary>
    private double[] Off(double[] at)
    {
        foreach (var control in controls)
            changed.Set(control.Handle.Control.Id, ChannelsAt(control, at));
        if (stretch is not null)
            changed.SetSwitch(stretch.Id, StretchAt(at));
        var frames = pose.FramesOf(changed);
        var off = new List<double>(targets.Count * 6);
        foreach (var target in targets)
        {
            var found = frames.WorldOf(target.Node).Frame;
            Add((found.Origin - target.Frame.Origin) / LimbMatch.AllowedMetres);
            if (target.Turns && found.Rotation * target.Frame.Rotation.Inverse is var turn)
                Add(turn.Vector * (2 * Math.Sign(turn.W) * Compare.DegreesPerRadian / LimbMatch.AllowedDegrees));
        }

        return [.. off];

        void Add(Vector3d vector) => off.AddRange([vector.X, vector.Y, vector.Z]);
    }

    private Trs ChannelsAt(Fitted control, double[] at)
    {
        var set = control.Set;
        foreach (var (index, axis) in control.Moves.Index())
            set = set with { Translation = set.Translation + (axis * at[control.FirstMove + index]) };
        if (control.FirstTurn is not { } first)
            return set;
        var by = new Vector3d(at[first], at[first + 1], at[first + 2]);
        var turn = by.Direction is { } about ? control.Set.Rotation * Quaterniond.About(about, by.Length) : control.Set.Rotation;
        return set with { Rotation = new ControlLocks(pose.ControlOf(control.Handle), []).Kept(control.Set.Rotation, turn) };
    }

    private double StretchAt(double[] at) => Folded(stretched + at[^1]);

    // Beyond its ends it goes back: cut off there, it would have no slope by which to leave them.
    private static double Folded(double value) => Math.Abs(Math.IEEERemainder(value, 2));

    /// <summary>A control whose channels are arguments.</summary>
    /// <param name="Handle">The control.</param>
    /// <param name="Set">Its channels to begin with.</param>
    /// <param name="Moves">The axes along which it may move.</param>
    /// <param name="FirstMove">The first argument of those.</param>
    /// <param name="FirstTurn">The first of three arguments that turn it; none: its turns are locked.</param>
    private sealed record Fitted(Handle Handle, Trs Set, Vector3d[] Moves, int FirstMove, int? FirstTurn);
}
