using Condyle.Evaluation;
using Condyle.Runtime.Kernels;

namespace Condyle.Runtime.Compilation;

/// <summary>What a batch does; within a level, batches run in this order.</summary>
internal enum BatchKind
{
    StillFrame,
    ChannelFrame,
    StillWorld,
    ChannelWorld,
    SpaceFrame,
    Space,
    Follow,
    PairMeet,
    Meet,
    Drive,
    Blend,
    ChainBlend,
    TwoBoneFrame,
    TwoBone,
    ManyBone,
    CurveChain,
    Aim,
    TwistFrame,
    Twist,
    Falloff,
    Measure,
    Response,
    Morph,
    Axes,
    Unscaled,
}

/// <summary>What belongs into one batch.</summary>
/// <param name="Kind">What is done.</param>
/// <param name="IsPlaced">Whether channels stand behind a placement.</param>
/// <param name="WritesChannels">Whether channels are written beside frames.</param>
/// <param name="IsChain">Whether it is for chains' later joints.</param>
/// <param name="Limbs">What two-bone solvers have in common.</param>
/// <param name="IsTrued">Whether rotations are brought back to length one.</param>
/// <param name="LeavesChannels">Whether nobody reads the channels while the rig is evaluated.</param>
internal readonly record struct BatchKey(BatchKind Kind, bool IsPlaced = false, bool WritesChannels = false, bool IsChain = false, LimbKind Limbs = default, bool IsTrued = false, bool LeavesChannels = false)
    : IComparable<BatchKey>
{
    /// <summary>From so many levels to the next, products of rotations go without being brought back to length one: each leaves them off by some rounding.</summary>
    private const int LevelsUntrued = 4;

    private (BatchKind, bool, bool, bool, bool, bool, bool, bool, bool, bool) Order => (Kind, IsPlaced, WritesChannels, IsChain, Limbs.HasPole, Limbs.IsTurned, Limbs.IsPlain, Limbs.Leans, IsTrued, LeavesChannels);

    public static BatchKey Of(PlannedNode node) => node switch
    {
        { IsFramedByWriter: true } => Of(node.Writer!),
        { Writer: SpaceWriter } => new(node.IsRigid ? BatchKind.SpaceFrame : BatchKind.Space),
        { Moves: true } => new(node.IsRigid ? BatchKind.ChannelFrame : BatchKind.ChannelWorld, IsPlacedOn(node), IsTrued: node.IsRigid && IsTruedAt(node)),
        _ => new(node.IsRigid ? BatchKind.StillFrame : BatchKind.StillWorld),
    };

    public static BatchKey Of(Writer writer) => writer switch
    {
        DriveWriter { GivesFrames: true, Target: var target } => new(BatchKind.Follow, IsPlacedOn(target), target.ChannelsAreRead, LeavesChannels: target.LeavesChannels),
        DriveWriter { Target: var target } => new(BatchKind.Drive, IsPlacedOn(target)),
        BlendWriter { GivesFrames: true, Target: var target } blend => new(
            blend.IsWholePair ? BatchKind.PairMeet : BatchKind.Meet, IsPlacedOn(target), target.ChannelsAreRead, blend.Before is not null, LeavesChannels: target.LeavesChannels),
        BlendWriter { Target: var target } blend => new(blend.Before is null ? BatchKind.Blend : BatchKind.ChainBlend, IsPlacedOn(target)),
        TwoBoneWriter solver => new(
            solver.GivesFrames ? BatchKind.TwoBoneFrame : BatchKind.TwoBone, Limbs: solver.Kind),
        ManyBoneWriter => new(BatchKind.ManyBone),
        CurveChainWriter => new(BatchKind.CurveChain),
        AimWriter => new(BatchKind.Aim),
        TwistWriter { Target: var target } => target.IsRigid ? new(BatchKind.TwistFrame, IsPlacedOn(target)) : new(BatchKind.Twist),
        FalloffWriter => new(BatchKind.Falloff),
        MeasureWriter => new(BatchKind.Measure),
        ResponseWriter => new(BatchKind.Response),
        MorphWriter => new(BatchKind.Morph),
        _ => throw new InvalidOperationException("An unknown kind of writer."),
    };

    public int CompareTo(BatchKey other) => Order.CompareTo(other.Order);

    private static bool IsTruedAt(PlannedNode node) => node.Level / LevelsUntrued > (node.Stand.Root?.Level ?? 0) / LevelsUntrued;

    private static bool IsPlacedOn(PlannedNode node) => node.Stand.Offset != Affine3d.Identity;
}
