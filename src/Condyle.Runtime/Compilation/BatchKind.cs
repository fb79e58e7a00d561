using Condyle.Evaluation;

namespace Condyle.Runtime.Compilation;

/// <summary>What a batch does; within a level, batches run in this order.</summary>
internal enum BatchKind
{
    StillWorld,
    ChannelWorld,
    PlacedWorld,
    Drive,
    Blend,
    ChainBlend,
    TwoBone,
}

/// <summary>What belongs into one batch.</summary>
/// <param name="Kind">What is done.</param>
/// <param name="IsRigid">Whether nothing on the way can have scale, which is done with rotations alone.</param>
/// <param name="IsPlaced">Whether channels stand behind a placement.</param>
/// <param name="KeepsTurns">Whether somebody reads the rotations of the world frames by themselves.</param>
internal readonly record struct BatchKey(BatchKind Kind, bool IsRigid, bool IsPlaced = false, bool KeepsTurns = false) : IComparable<BatchKey>
{
    private (BatchKind, bool, bool, bool) Order => (Kind, IsRigid, IsPlaced, KeepsTurns);

    public static BatchKey Of(PlannedNode node) => new(
        !node.Moves ? BatchKind.StillWorld : node.Stand.Offset == Affine3d.Identity ? BatchKind.ChannelWorld : BatchKind.PlacedWorld,
        node.IsRigid,
        KeepsTurns: node.IsRigid || node.TurnIsRead);

    public static BatchKey Of(Writer writer) => writer switch
    {
        DriveWriter drive => new(BatchKind.Drive, drive.IsRigid, IsPlacedOn(drive.Target)),
        BlendWriter { Before: null } blend => new(BatchKind.Blend, blend.StandIsRigid, IsPlacedOn(blend.Target)),
        BlendWriter blend => new(BatchKind.ChainBlend, blend.StandIsRigid, IsPlacedOn(blend.Target)),
        TwoBoneWriter => new(BatchKind.TwoBone, IsRigid: false),
        _ => throw new InvalidOperationException("An unknown kind of writer."),
    };

    public int CompareTo(BatchKey other) => Order.CompareTo(other.Order);

    private static bool IsPlacedOn(PlannedNode node) => node.Stand.Offset != Affine3d.Identity;
}
