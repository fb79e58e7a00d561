using Condyle.Model;

namespace Condyle.Evaluation;

/// <summary>A direction along a curve's end and one across it, in the frame of the node there.</summary>
internal readonly record struct CurveEnd(Vector3d Along, Vector3d Across);

/// <summary>How a joint stands on its curve at rest, in the frame of the curve there.</summary>
/// <param name="At">Its length from the curve's start.</param>
/// <param name="Offset">From the curve to the joint.</param>
/// <param name="Turn">The joint's rotation.</param>
/// <param name="Bone">The direction of its bone; none at the tip and where the bone has no length.</param>
internal readonly record struct CurveJoint(double At, Vector3d Offset, Quaterniond Turn, Vector3d Bone);

/// <summary>What a curve's rest gives its solver.</summary>
internal sealed class CurveRest
{
    private CurveRest(RigCurve curve, RigCopy copy, IReadOnlyList<RigNode> nodes, RestPose rest)
    {
        Stretch = Facts.Known(curve.Stretch, $"How {curve.Title} stretches") ?? WeightPolynomial.Zero;
        Nodes = nodes;
        ChainLength = Evaluation.ChainLength.AtRest(copy, rest);
        var framed = new FramedCurve([.. nodes.Select(node => rest.WorldOf(node).Origin)], Vector3d.UnitY);
        Length = framed.Length > BendPlane.Near * ChainLength ? framed.Length : 0;
        var across = framed.StartAlong.AnyAcross();
        framed.Frame(across);
        Start = EndIn(nodes[0], framed.StartAlong, across, rest);
        End = EndIn(nodes[nodes.Count - 1], framed.EndAlong, framed.EndAcross, rest);
        var joints = copy.Joints.Select(joint => rest.WorldOf(joint)).ToList();
        var (found, least) = (new List<CurveJoint>(), 0.0);
        for (var i = 0; i < joints.Count; i++)
        {
            least = Math.Max(least, framed.LengthNearest(joints[i].Origin)); // a joint doesn't stand before the one above
            var (point, frame) = framed.At(least);
            var bone = i + 1 < joints.Count ? (joints[i + 1].Origin - joints[i].Origin).Direction ?? Vector3d.Zero : Vector3d.Zero;
            found.Add(new(least, frame.Inverse.Rotate(joints[i].Origin - point), frame.Inverse * joints[i].Rotation, frame.Inverse.Rotate(bone)));
        }

        Joints = found;
    }

    public WeightPolynomial Stretch { get; }

    public IReadOnlyList<RigNode> Nodes { get; }

    public CurveEnd Start { get; }

    public CurveEnd End { get; }

    public IReadOnlyList<CurveJoint> Joints { get; }

    /// <summary>The curve's length; zero where its nodes meet, so that the chain has nothing to stretch by.</summary>
    public double Length { get; }

    /// <summary>The bones' lengths together.</summary>
    public double ChainLength { get; }

    /// <summary>The rest of a curve; none where the sentence is unfinished: a curve needs two nodes and a bone.</summary>
    public static CurveRest? Of(RigCurve curve, RestPose rest)
    {
        if (curve.Copy is not { IsUnknown: false } copy || curve.NodesAreOpen || curve.Nodes.Contains(null))
            throw new RigGeometryException($"The copy or the nodes of {curve.Title} aren't known.");
        return curve.Nodes.Count < 2 || copy.Joints.Count < 2 ? null : new(curve, copy, [.. curve.Nodes.OfType<RigNode>()], rest);
    }

    private static CurveEnd EndIn(RigNode node, Vector3d along, Vector3d across, RestPose rest)
    {
        var back = rest.WorldOf(node).Rotation.Inverse;
        return new(back.Rotate(along), back.Rotate(across));
    }
}
