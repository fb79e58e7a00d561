using Lane = System.Runtime.Intrinsics.Vector128<float>;
using Lanes = System.Runtime.Intrinsics.Vector128;

namespace Condyle.Runtime.Kernels.One;

/// <summary>Aims: frame(d, u) · frame(p, q)⁻¹, or the smallest turn from where the parent carries the node.</summary>
internal static class AimKernel
{
    public static void Run(AimBatch batch, Buffers pose)
    {
        for (var i = 0; i < batch.At.Length; i++)
        {
            var stand = batch.Targets.Stand(i, pose);
            var carried = (pose.Worlds.Wide(batch.Targets.Bases[i]) * batch.Carried.Constant(i)).Turn;
            var from = stand.Point(pose.Moves.Wide(batch.Targets.Channels[i]));
            var pointing = carried.Rotate(batch.Along.Constant(i));
            var (direction, closeness) = Towards(pose.Worlds.Wide(batch.At[i]).Origin - from, pointing);
            var turned = WideTurn.Between(pointing, direction, pointing.AnyAcross()) * carried;
            batch.Targets.Turn(i, batch.Ups[i] is { } up ? Faced(up, direction, closeness, from, turned, pose) : turned, stand, pose);
        }
    }

    /// <summary>The direction of a vector, and one over its length; another one, and nothing, where the nodes stand on each other.</summary>
    private static (WideVector Direction, Lane Closeness) Towards(in WideVector vector, in WideVector otherwise)
    {
        var length = vector.Length;
        var (isNear, closeness) = (Lanes.LessThan(length, Lanes.Create(AimBatch.Near)), Lanes.Create(1f) / length);
        return (WideVector.Choose(isNear, otherwise, vector * closeness), Lanes.ConditionalSelect(isNear, Lanes.Create(0f), closeness));
    }

    /// <summary>The rotation that faces along a direction and with its side up; another one where up lies on the line, or no further beside it than a float of the places tells.</summary>
    private static WideTurn Faced(AimUp up, in WideVector direction, Lane closeness, in WideVector from, in WideTurn otherwise, Buffers pose)
    {
        var (one, near) = (Lanes.Create(1f), Lanes.Create(AimBatch.Near));
        var world = pose.Worlds.Wide(up.Node);
        var facing = up.Axis is { } axis ? world.Direction(WideVector.All(axis)) : world.Origin - from;
        var length = facing.Length;
        var across = (facing * (one / length)).Across(direction);
        var sine = across.Length;
        var tellsFrom = Lanes.FusedMultiplyAdd(from.Length * Lanes.Create(AimBatch.Rounding), up.Axis is null ? closeness + (one / length) : closeness, near);
        var isThere = Lanes.LessThan(up.Axis is null ? near : Lanes.Create(Rotation.Tiny), length) & Lanes.LessThan(tellsFrom, sine);
        var side = across * (one / sine);
        return WideTurn.Choose(isThere, WideTurn.FromAxes(direction, side, WideVector.Cross(direction, side)) * WideTurn.All(up.FromRest), otherwise);
    }
}
