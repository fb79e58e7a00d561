using Condyle.Model;

namespace Condyle.Evaluation;

/// <summary>
/// An aim: turns a node so that what points at the target at rest (or an axis that was named) does so now. With d the direction to the target, u the part of up across it,
/// and p, q the same two in the node's frame at rest, the rotation in the world is frame(d, u) · frame(p, q)⁻¹, where frame(x, y) has the axes x, y, x × y.
/// Without an up it is the smallest turn that brings p to d from where the node's parent carries it, so that nothing is rolled.
/// </summary>
/// <remarks>
/// Where the target is nearer than <see cref="AimRest.Near"/>, p stays where the parent carries it; where up lies on the line to the target, the roll is as without one. The runtime takes what a float of the places can't tell from the line as on it.
/// Not continuous at those two places, nor, without an up, where the target is opposite to where the parent carries p: there it is a half turn about a direction across.
/// The target counts from where the node stands without the responses and falloffs on top.
/// </remarks>
internal sealed class AimedNode(AimRest atRest) : IChannelWriter
{
    public AimRest AtRest => atRest;

    public Trs ChannelsOf(RigNode node, PoseFrames frames)
    {
        var stand = frames.StandOf(node);
        var carried = (stand * RestPose.ChannelsOf(node).ToAffine()).Rotation;
        var (origin, pointing) = (frames.OriginOf(node), carried.Rotate(atRest.Along));
        var toTarget = frames.WorldOf(atRest.Target).Origin - origin;
        var direction = toTarget.Length >= AimRest.Near ? toTarget.Direction!.Value : pointing;
        var up = atRest.Up is { } given ? AimRest.DirectionOf(given, frames.WorldOf(given.Node), origin) : null;
        var turned = atRest.Side is { } side && up is { } facing && AimRest.Across(facing, direction) is { } across
            ? Frame(direction, across) * Frame(atRest.Along, side).Inverse
            : Quaterniond.Between(pointing, direction, pointing.AnyAcross()) * carried;
        return frames.Project(node, stand.Inverse() * Affine3d.Rigid(Vector3d.Zero, turned));
    }

    public static Quaterniond Frame(Vector3d x, Vector3d y) => Quaterniond.FromAxes(x, y, Vector3d.Cross(x, y));
}
