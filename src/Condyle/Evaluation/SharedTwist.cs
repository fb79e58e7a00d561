using Condyle.Model;

namespace Condyle.Evaluation;

/// <summary>
/// A twist: the roll of a bone, shared out. With e the end's rotation as the start sees it and e₀ the same at rest, the end's turn from rest is q = e · e₀⁻¹ in the
/// start's frame, or e₀⁻¹ · e in its own. Its twist θ about the bone b (<see cref="SwingTwist"/>) goes to the joints by their shares f: each is turned in the world to
/// carrier · turn(b, f·θ) · its rotation in the carrier at rest. Carried by the start, the turn is as the start sees it; carried by the end, as the end sees it, and there
/// f = −1 leaves of q the swing alone.
/// </summary>
/// <remarks>
/// An end that hangs below the joints is taken by the frame that its drive or blend gives it, which doesn't depend on them, without what comes on top; where that leaves it at
/// rest, as it rests in the start's frame.
/// Not continuous where θ is a half turn: joints jump by their share of a whole turn; nor where the swing is a half turn, which leaves no roll.
/// </remarks>
internal sealed class SharedTwist(TwistRest atRest) : IChannelWriter
{
    public Trs ChannelsOf(RigNode node, PoseFrames frames)
    {
        var joint = atRest.Joints.First(candidate => candidate.Node == node);
        var turned = frames.WorldOf(atRest.Carrier).Rotation * Quaterniond.About(atRest.Axis, joint.Share * frames.Once(this, AngleIn)) * joint.Turn;
        return frames.Project(node, frames.StandOf(node).Inverse() * Affine3d.Rigid(Vector3d.Zero, turned));
    }

    private double AngleIn(PoseFrames frames)
    {
        var seen = frames.WorldOf(atRest.Start).Rotation.Inverse * EndIn(frames);
        var turn = atRest.IsCarriedByEnd ? atRest.EndTurn.Inverse * seen : seen * atRest.EndTurn.Inverse;
        return SwingTwist.Angle(turn, atRest.Axis) ?? 0;
    }

    /// <summary>The end's rotation in the world.</summary>
    private Quaterniond EndIn(PoseFrames frames) => atRest.IsEndBelow && (frames.FrameWriterOf(atRest.End) is not null || !frames.IsTurned(atRest.End))
        ? (frames.FrameWriterOf(atRest.End)?.FrameOf(atRest.End, frames) ?? (frames.WorldOf(atRest.Start) * atRest.EndInStart)).Rotation
        : frames.WorldOf(atRest.End).Rotation; // below the joints and turned otherwise it depends on them: the loop is found there
}
