using System.Numerics;

namespace Condyle.Runtime.Kernels;

/// <summary>
/// Curve chains: lays copies along curves through nodes. Each joint keeps the offset and the turn that it has at rest from the curve's frame; the frames start with
/// the first node's turn, and what the last node is turned beyond them is spread along the curve. Bones point from place to place and keep their length but for the stretch.
/// </summary>
internal sealed class CurveChainBatch : Batch
{
    public required CopyChains Chains { get; init; }

    /// <summary>For each curve, the end of its stretch of nodes.</summary>
    public required int[] NodeEnds { get; init; }

    /// <summary>The world slots of the nodes.</summary>
    public required int[] Nodes { get; init; }

    /// <summary>Along each curve's start at rest and across it, in the frame of its first node; and of its end, in that of its last.</summary>
    public required CurveEnds Starts { get; init; }

    public required CurveEnds Ends { get; init; }

    /// <summary>The curves' lengths at rest.</summary>
    public required float[] Lengths { get; init; }

    /// <summary>The bones' lengths together at rest.</summary>
    public required float[] ChainLengths { get; init; }

    /// <summary>The weight slot of each curve's stretch.</summary>
    public required int[] Stretches { get; init; }

    /// <summary>Each joint's length from the curve's start at rest.</summary>
    public required float[] At { get; init; }

    /// <summary>From the curve to each joint at rest, its rotation and the direction of its bone, in the frame of the curve there.</summary>
    public required Vectors Offsets { get; init; }

    public required Rotations Turns { get; init; }

    public required Vectors Bones { get; init; }

    protected override void RunOne(Buffers pose)
    {
        for (var i = 0; i < Chains.Count; i++)
            Lay(i, pose, pose.Room);
    }

    private void Lay(int i, Buffers pose, ChainRoom room)
    {
        var root = Chains.Root(i, pose);
        var (length, _) = Chains.Unsolved(i, root, room);
        var (firstNode, lastNode) = (i == 0 ? 0 : NodeEnds[i - 1], NodeEnds[i] - 1);
        for (var node = firstNode; node <= lastNode; node++)
            room.Nodes[node - firstNode] = pose.Worlds[Nodes[node]].Origin - root.Origin;
        var (first, last) = (Rotation.Of(pose.Worlds[Nodes[firstNode]], Vector3.One), Rotation.Of(pose.Worlds[Nodes[lastNode]], Vector3.One));

        var points = lastNode - firstNode + 1;
        var curve = new FramedCurve(new CubicThrough(room.Nodes.AsSpan(0, points), room.Slopes), room.Samples, Vector3.Transform(Starts.Along[i], first));
        curve.Frame(Starts.AcrossIn(i, first, curve.StartAlong));
        var roll = Roll(curve.EndAlong, curve.EndAcross, Ends.AcrossIn(i, last, curve.EndAlong));

        var stretch = Math.Clamp(pose.Weights[Stretches[i]], 0, 1);
        var size = ChainLengths[i] > Rotation.Tiny ? length / ChainLengths[i] : 1;
        var spread = Lengths[i] > Rotation.Tiny ? size + (stretch * ((curve.Length / Lengths[i]) - size)) : size;
        var joint = Chains.FirstOf(i);
        var place = PlaceOf(joint, curve, spread, size, roll);
        var moved = place.Point;
        for (var bone = 0; ; bone++, joint++)
        {
            room.Turns[bone] = place.Frame * Turns[joint];
            if (joint + 1 == Chains.Ends[i])
                break;
            var next = PlaceOf(joint + 1, curve, spread, size, roll);
            var step = next.Point - place.Point;
            room.Factors[bone] = room.Lengths[bone] > Rotation.Tiny ? ((1 - stretch) * (spread / size)) + (stretch * (step.Length() / room.Lengths[bone])) : 1;
            var carried = Vector3.Transform(Bones[joint], place.Frame);
            if (Bones[joint] != Vector3.Zero && Rotation.TryDirection(step, out var direction))
                room.Turns[bone] = Rotation.Between(carried, direction, Rotation.AnyAcross(carried)) * room.Turns[bone];
            place = next;
        }

        Chains.Write(i, root, moved, pose, room);
    }

    private (Vector3 Point, Quaternion Frame) PlaceOf(int joint, in FramedCurve curve, float spread, float size, float roll)
    {
        var length = At[joint] * spread;
        var (point, carried) = curve.At(length);
        var share = curve.Length > Rotation.Tiny ? MathF.Min(length / curve.Length, 1) : 0;
        var frame = carried * Quaternion.CreateFromAxisAngle(Vector3.UnitX, roll * share);
        return (point + (Vector3.Transform(Offsets[joint], frame) * size), frame);
    }

    /// <summary>The angle about the curve, in radians, from one direction across it to another.</summary>
    private static float Roll(Vector3 along, Vector3 from, Vector3 to) => MathF.Atan2(Vector3.Dot(Vector3.Cross(from, to), along), Vector3.Dot(from, to));
}

/// <summary>Directions along the ends of curves at rest and across them, in the frames of the nodes there.</summary>
internal sealed class CurveEnds
{
    public required Vectors Along { get; init; }

    public required Vectors Across { get; init; }

    /// <summary>Across a curve's end as the node there carries it from rest, brought across the curve by the smallest turn.</summary>
    public Vector3 AcrossIn(int i, Quaternion node, Vector3 along)
    {
        var carried = Vector3.Transform(Across[i], node);
        return Vector3.Transform(carried, Rotation.Between(Vector3.Transform(Along[i], node), along, carried));
    }
}
