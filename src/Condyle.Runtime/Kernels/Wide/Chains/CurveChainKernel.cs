using Lane = System.Runtime.Intrinsics.Vector128<float>;
using Lanes = System.Runtime.Intrinsics.Vector128;

namespace Condyle.Runtime.Kernels.One;

/// <summary>Lays copies along curves.</summary>
internal static class CurveChainKernel
{
    public static void Run(CurveChainBatch batch, Buffers pose)
    {
        for (var i = 0; i < batch.Chains.Count; i++)
            Lay(batch, i, pose);
    }

    private static void Lay(CurveChainBatch batch, int i, Buffers pose)
    {
        var (chains, room) = (batch.Chains, pose.Room);
        var root = chains.Root(i, pose);
        var (length, _) = chains.Unsolved(i, root, room);
        var curve = CurveOf(batch, i, root.Origin, pose, out var roll);
        var stretch = Lanes.MinNative(Lanes.MaxNative(pose.Weights.Wide(batch.Stretches[i]), Lane.Zero), Lanes.Create(1f));
        var size = batch.ChainLengths[i] > Rotation.Tiny ? length / Lanes.Create(batch.ChainLengths[i]) : Lanes.Create(1f);
        var spread = batch.Lengths[i] > Rotation.Tiny ? Lanes.FusedMultiplyAdd(stretch, (curve.Length / Lanes.Create(batch.Lengths[i])) - size, size) : size;

        var joint = chains.FirstOf(i);
        var place = PlaceOf(batch, joint, curve, spread, size, roll);
        var moved = place.Point;
        for (var bone = 0; bone < chains.BonesOf(i); bone++, joint++)
        {
            var next = PlaceOf(batch, joint + 1, curve, spread, size, roll);
            var step = next.Point - place.Point;
            room.Factors.Set(bone, Factor(room.Lengths.Wide(bone), step, stretch, spread / size));
            room.Turns.Set(bone, Towards(step, place.Frame, batch.Bones[joint], place.Frame * batch.Turns.Constant(joint)));
            place = next;
        }

        room.Turns.Set(chains.BonesOf(i), place.Frame * batch.Turns.Constant(joint));
        chains.Write(i, root, moved, pose);
    }

    /// <summary>The curve, from the unsolved root, and the angle that its last node is turned about it beyond what its frames are, in radians.</summary>
    private static FramedCurve CurveOf(CurveChainBatch batch, int i, in WideVector root, Buffers pose, out Lane roll)
    {
        var (room, from, end) = (pose.Room, i == 0 ? 0 : batch.NodeEnds[i - 1], batch.NodeEnds[i]);
        for (var node = from; node < end; node++)
            room.Nodes.Set(node - from, pose.Worlds.Wide(batch.Nodes[node]).Origin - root);
        var (first, last) = (pose.Worlds.Wide(batch.Nodes[from]).Turn, pose.Worlds.Wide(batch.Nodes[end - 1]).Turn);
        var curve = new FramedCurve(new(room, end - from), room, first.Rotate(batch.Starts.Along.Constant(i)));
        curve.Frame(AcrossIn(batch.Starts, i, first, curve.StartAlong));
        roll = Roll(curve.EndAlong, curve.EndAcross, AcrossIn(batch.Ends, i, last, curve.EndAlong));
        return curve;
    }

    /// <summary>Across a curve's end as the node there carries it from rest, brought across the curve by the smallest turn.</summary>
    private static WideVector AcrossIn(CurveEnds ends, int i, in WideTurn node, in WideVector along)
    {
        var carried = node.Rotate(ends.Across.Constant(i));
        return WideTurn.Between(node.Rotate(ends.Along.Constant(i)), along, carried).Rotate(carried);
    }

    /// <summary>The angle about the curve from one direction across it to another.</summary>
    private static Lane Roll(in WideVector along, in WideVector from, in WideVector to)
    {
        // The half of an angle has, times any number, sine and 1 + cosine, or 1 − cosine and sine.
        var (sine, cosine) = (WideVector.Dot(WideVector.Cross(from, to), along), WideVector.Dot(from, to));
        var length = Lanes.Sqrt(Lanes.FusedMultiplyAdd(sine, sine, cosine * cosine));
        var isAhead = Lanes.LessThanOrEqual(Lane.Zero, cosine);
        var half = HalfAngle.Of(Lanes.ConditionalSelect(isAhead, sine, length - cosine), Lanes.ConditionalSelect(isAhead, length + cosine, sine), out _);
        return half + half;
    }

    private static (WideVector Point, WideTurn Frame) PlaceOf(CurveChainBatch batch, int joint, in FramedCurve curve, Lane spread, Lane size, Lane roll)
    {
        var length = spread * Lanes.Create(batch.At[joint]);
        var (point, carried) = curve.At(length);
        var share = Lanes.MinNative(length / curve.Length, Lanes.Create(1f));
        share = Lanes.ConditionalSelect(Lanes.LessThan(Lanes.Create(Rotation.Tiny), curve.Length), share, Lane.Zero);
        var (sine, cosine) = HalfAngle.Parts(roll * share * Lanes.Create(0.5f));
        var frame = carried * new WideTurn(sine, Lane.Zero, Lane.Zero, cosine);
        return (WideVector.MultiplyAdd(frame.Rotate(batch.Offsets.Constant(joint)), size, point), frame);
    }

    /// <summary>How many times its length a bone has.</summary>
    private static Lane Factor(Lane bone, in WideVector step, Lane stretch, Lane spread)
    {
        var one = Lanes.Create(1f);
        var factor = Lanes.FusedMultiplyAdd(one - stretch, spread, stretch * (step.Length / bone));
        return Lanes.ConditionalSelect(Lanes.LessThan(Lanes.Create(Rotation.Tiny), bone), factor, one);
    }

    /// <summary>A joint's rotation with its bone along the step to the next place.</summary>
    private static WideTurn Towards(in WideVector step, in WideTurn frame, System.Numerics.Vector3 bone, in WideTurn turn)
    {
        if (bone == System.Numerics.Vector3.Zero)
            return turn;
        var carried = frame.Rotate(WideVector.All(bone));
        var direction = step.Direction(out var isStep);
        return WideTurn.Choose(isStep, WideTurn.Between(carried, direction, carried.AnyAcross()) * turn, turn);
    }
}
