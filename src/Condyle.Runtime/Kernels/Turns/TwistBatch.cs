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

    protected override void RunOne(Buffers pose) => One.TwistKernel.Run(this, pose);

    protected override void RunEight(Buffers pose) => Eight.TwistKernel.Run(this, pose);

    protected override void RunSixteen(Buffers pose) => Sixteen.TwistKernel.Run(this, pose);
}

/// <summary>The same where there is no scale on the way to the joint: its channel is the rotation as its base and placement see it.</summary>
internal sealed class TwistFrameBatch : Batch
{
    public required RigidRoll[] Items { get; init; }

    /// <summary>Whether there are placements; the channels of exported joints stand right on the base.</summary>
    public required bool IsPlaced { get; init; }

    protected override void RunOne(Buffers pose) => One.TwistFrameKernel.Run(this, pose);

    protected override void RunEight(Buffers pose) => Eight.TwistFrameKernel.Run(this, pose);

    protected override void RunSixteen(Buffers pose) => Sixteen.TwistFrameKernel.Run(this, pose);
}

/// <summary>A joint's share of a bone's roll, and what its channels stand in.</summary>
/// <param name="Roll">The share.</param>
/// <param name="Channel">The joint's channels.</param>
/// <param name="Base">What carries it.</param>
/// <param name="Placement">The rotation of its placement.</param>
internal readonly record struct RigidRoll(SharedRoll Roll, int Channel, int Base, Quaternion Placement)
{
    public readonly SharedRoll Roll = Roll;
    public readonly Quaternion Placement = Placement;
}

/// <summary>A joint's share of a bone's roll.</summary>
/// <param name="Start">The world slot of the node from which the roll counts.</param>
/// <param name="End">Of the node whose roll it is.</param>
/// <param name="IsCarriedByEnd">Whether the end carries the joint; else the start does.</param>
/// <param name="Before">What takes the rest away from the end's rotation as the start sees it, on the left; nothing where the start carries the joint.</param>
/// <param name="After">The same on the right; nothing where the end does.</param>
/// <param name="Axis">The direction of the bone in the carrier.</param>
/// <param name="Share">The share.</param>
/// <param name="AtRest">The joint's rotation in the carrier at rest.</param>
internal readonly record struct SharedRoll(int Start, int End, bool IsCarriedByEnd, Quaternion Before, Quaternion After, Vector3 Axis, float Share, Quaternion AtRest);
