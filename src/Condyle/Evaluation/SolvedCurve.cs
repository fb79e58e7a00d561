using Condyle.Model;

namespace Condyle.Evaluation;

/// <summary>
/// A curve chain: lays a copy along a <see cref="FramedCurve"/> through nodes. Each joint keeps the offset and the turn that it has at rest from the curve's frame;
/// the frames start with the first node's turn, and what the last node is turned beyond them is spread along the curve by length.
/// </summary>
/// <remarks>
/// With w the stretch, L the curve's length, L₀ that at rest and k = 1 + w · (L / L₀ − 1), a joint that rests at the length s stands at k · s. From the first of those
/// places on, each bone points to the next one, turned there by the smallest turn, and has (1 − w) · k of its own length and w of the distance of the two places: without
/// stretch only the root's translation is written, and all bones keep their length. Lengths at rest grow with the copy's parent.
/// Not continuous: where the curve's direction at the first or last node turns back against what the node carries; where the last node is turned half a turn
/// beyond the carried frame; where a bone turns back against the curve; where nodes meet, or the curve through them turns back on itself.
/// </remarks>
internal sealed class SolvedCurve(CurveRest atRest, RigCopy copy) : IChannelWriter
{
    public CurveRest AtRest => atRest;

    public RigCopy Copy => copy;

    public Trs ChannelsOf(RigNode node, PoseFrames frames) => frames.Once(this, Solve)[copy.Joints.IndexOf(node)];

    private Trs[] Solve(PoseFrames frames)
    {
        var unsolved = UnsolvedCopy.Of(copy, frames);
        var nodes = atRest.Nodes.Select(frames.WorldOf).ToList();
        var (first, last) = (nodes[0].Rotation, nodes[nodes.Count - 1].Rotation);
        var curve = new FramedCurve([.. nodes.Select(node => node.Origin)], first.Rotate(atRest.Start.Along));
        curve.Frame(Across(atRest.Start, first, curve.StartAlong));
        var roll = Roll(curve.EndAlong, curve.EndAcross, Across(atRest.End, last, curve.EndAlong));

        var stretch = Math.Min(Math.Max(frames.ValueOf(atRest.Stretch), 0), 1);
        var size = atRest.ChainLength > Vector3d.Tiny ? unsolved.Length / atRest.ChainLength : 1;
        var spread = atRest.Length > Vector3d.Tiny ? size + (stretch * ((curve.Length / atRest.Length) - size)) : size;
        var places = atRest.Joints.Select(joint => PlaceOf(joint, curve, spread, size, roll)).ToList();

        var turned = new Quaterniond[places.Count];
        var factors = new double[places.Count - 1];
        for (var i = 0; i < places.Count; i++)
        {
            turned[i] = places[i].Frame * atRest.Joints[i].Turn;
            if (i == factors.Length)
                break;
            var (bone, length) = (places[i + 1].Point - places[i].Point, unsolved.Lengths[i]);
            factors[i] = length > Vector3d.Tiny ? ((1 - stretch) * (spread / size)) + (stretch * (bone.Length / length)) : 1;
            var carried = places[i].Frame.Rotate(atRest.Joints[i].Bone);
            if (bone.Direction is { } direction && carried != Vector3d.Zero)
                turned[i] = Quaterniond.Between(carried, direction, carried.AnyAcross()) * turned[i];
        }

        return unsolved.Channels(turned, factors, places[0].Point - unsolved.Frames[0].Origin, frames);
    }

    /// <summary>Across a curve's end as the node there carries it from rest, brought across the curve by the smallest turn.</summary>
    private static Vector3d Across(CurveEnd end, Quaterniond node, Vector3d along)
    {
        var carried = node.Rotate(end.Across);
        return Quaterniond.Between(node.Rotate(end.Along), along, carried).Rotate(carried);
    }

    /// <summary>The angle about the curve, in radians, from one direction across it to another.</summary>
    private static double Roll(Vector3d along, Vector3d from, Vector3d to) => Math.Atan2(Vector3d.Dot(Vector3d.Cross(from, to), along), Vector3d.Dot(from, to));

    private static (Vector3d Point, Quaterniond Frame) PlaceOf(CurveJoint joint, FramedCurve curve, double spread, double size, double roll)
    {
        var length = joint.At * spread;
        var (point, carried) = curve.At(length);
        var share = curve.Length > Vector3d.Tiny ? Math.Min(length / curve.Length, 1) : 0;
        var frame = carried * Quaterniond.About(Vector3d.UnitX, roll * share);
        return (point + (frame.Rotate(joint.Offset) * size), frame);
    }
}
