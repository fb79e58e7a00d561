using System.Numerics;

namespace Condyle.Runtime.Kernels;

/// <summary>
/// Shares of twists: with the end's turn from rest q, its part θ about the bone b is 2·atan2(q.xyz · b, q.w) (swing and twist), and the joint's rotation is
/// carrier · turn(b, share · θ) · its rotation in the carrier at rest.
/// </summary>
internal sealed class TwistBatch : Batch
{
    public required TurnTargets Targets { get; init; }

    public required SharedRoll[] Items { get; init; }

    protected override void RunOne(Buffers pose)
    {
        for (var i = 0; i < Targets.Count; i++)
        {
            ref readonly var item = ref Items[i];
            var seen = Quaternion.Conjugate(Of(item.Start, pose)) * Of(item.End, pose);
            var roll = Quaternion.CreateFromAxisAngle(item.Axis, item.Share * Angle(item.Before * seen * item.After, item.Axis));
            Targets.Turn(i, Of(item.Carrier, pose) * roll * item.AtRest, Targets.Stand(i, pose), pose);
        }
    }

    private static float Angle(Quaternion turn, Vector3 axis)
    {
        var sine = Vector3.Dot(new(turn.X, turn.Y, turn.Z), axis);
        return turn.W < 0 || (turn.W == 0 && sine < 0) ? 2 * MathF.Atan2(-sine, -turn.W) : 2 * MathF.Atan2(sine, turn.W);
    }

    private static Quaternion Of(int world, Buffers pose) => Rotation.Of(pose.Worlds[world], Vector3.One);
}

/// <summary>A joint's share of a bone's roll.</summary>
/// <param name="Start">The world slot of the node from which the roll counts.</param>
/// <param name="End">Of the node whose roll it is.</param>
/// <param name="Carrier">Of the one of them that carries the joint.</param>
/// <param name="Before">What takes the rest away from the end's rotation as the start sees it, on the left; nothing where the start carries the joint.</param>
/// <param name="After">The same on the right; nothing where the end does.</param>
/// <param name="Axis">The direction of the bone in the carrier.</param>
/// <param name="Share">The share.</param>
/// <param name="AtRest">The joint's rotation in the carrier at rest.</param>
internal readonly record struct SharedRoll(int Start, int End, int Carrier, Quaternion Before, Quaternion After, Vector3 Axis, float Share, Quaternion AtRest);
