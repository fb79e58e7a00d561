using System.Numerics;

namespace Condyle.Runtime.Kernels;

/// <summary>
/// Aims: rotation = frame(d, u) · frame(p, q)⁻¹ with the direction d to the target and the part u of up across it, and the two as the node sees them at rest.
/// Without an up, or where it lies on the line, the smallest turn from where the parent carries the node.
/// </summary>
internal sealed class AimBatch : Batch
{
    /// <summary>Nearer than this, in metres, nodes stand on each other; and a direction whose part across the line is less lies on it.</summary>
    private const float Near = (float)Evaluation.AimRest.Near;

    public required TurnTargets Targets { get; init; }

    /// <summary>How the parents carry the nodes: their frames at rest, on their bases.</summary>
    public required Affines Carried { get; init; }

    /// <summary>The world slots of the nodes to point at.</summary>
    public required int[] At { get; init; }

    /// <summary>What points at them, in the nodes' own frames.</summary>
    public required Vectors Along { get; init; }

    public required AimUp?[] Ups { get; init; }

    protected override void RunOne(Buffers pose)
    {
        for (var i = 0; i < Targets.Count; i++)
            Turn(i, pose);
    }

    private void Turn(int i, Buffers pose)
    {
        var stand = Targets.Stand(i, pose);
        var carried = Rotation.Of(pose.Worlds[Targets.Bases[i]] * Carried[i], Vector3.One);
        var from = stand.Origin + stand.Direction(pose.Moves[Targets.Channels[i]]);
        var pointing = Vector3.Transform(Along[i], carried);
        var toTarget = pose.Worlds[At[i]].Origin - from;
        var length = toTarget.Length();
        var direction = length >= Near ? toTarget / length : pointing;
        var turned = Ups[i] is { } up && up.TryFace(direction, from, Near, pose, out var frame)
            ? frame
            : Rotation.Between(pointing, direction, Rotation.AnyAcross(pointing)) * carried;
        Targets.Turn(i, turned, stand, pose);
    }
}

/// <summary>What sets the roll of an aim.</summary>
/// <param name="Node">Its world slot.</param>
/// <param name="Axis">The axis of the node that is up; none: where the node stands.</param>
/// <param name="FromRest">From the node's own frame to that of the line and the side that faces up.</param>
internal sealed record AimUp(int Node, Vector3? Axis, Quaternion FromRest)
{
    /// <summary>The rotation in the world that faces along a direction and with its side up; false where up lies on the line.</summary>
    public bool TryFace(Vector3 direction, Vector3 from, float near, Buffers pose, out Quaternion turned)
    {
        turned = Quaternion.Identity;
        var world = pose.Worlds[Node];
        var up = Axis is { } axis ? world.Direction(axis) : world.Origin - from;
        var length = up.Length();
        if (length < (Axis is null ? near : Rotation.Tiny))
            return false;
        var across = Rotation.Across(up / length, direction);
        if (across.Length() < near)
            return false;
        var side = Vector3.Normalize(across);
        turned = Rotation.FromAxes(direction, side, Vector3.Cross(direction, side)) * FromRest;
        return true;
    }
}
