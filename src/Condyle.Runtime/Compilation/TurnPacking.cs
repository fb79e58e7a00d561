using Condyle.Evaluation;
using Condyle.Runtime.Kernels;

namespace Condyle.Runtime.Compilation;

/// <summary>Gathers aims, twists and falloffs into the arrays of their batches.</summary>
internal sealed class TurnPacking(Slots slots)
{
    public AimBatch Aims(IReadOnlyList<AimWriter> aims) => new()
    {
        Targets = TargetsOf(aims),
        Carried = Pack.Frames([.. aims.Select(aim => aim.Target.Stand.Offset * aim.Target.Rest.ToAffine())]),
        At = [.. aims.Select(aim => aim.At.WorldSlot)],
        Along = Pack.Vectors([.. aims.Select(aim => aim.Rest.Along)]),
        Ups = [.. aims.Select(UpOf)],
    };

    public TwistBatch Twists(IReadOnlyList<TwistWriter> twists) => new() { Targets = TargetsOf(twists), Items = [.. twists.Select(RollOf)] };

    public TwistFrameBatch RigidTwists(IReadOnlyList<TwistWriter> twists, bool isPlaced) => new()
    {
        Items = [.. twists.Select(twist => new RigidRoll(
            RollOf(twist), slots.ChannelsOf(twist.Target, twist), Slots.WorldOf(twist.Target.Stand.Root), twist.Target.Stand.Offset.Rotation.ToSingle()))],
        IsPlaced = isPlaced,
    };

    public static FalloffBatch Falloffs(IReadOnlyList<FalloffWriter> falloffs)
    {
        var end = 0;
        return new()
        {
            Channels = [.. falloffs.Select(falloff => falloff.Target.ChannelSlot)],
            Bases = [.. falloffs.Select(falloff => falloff.Target.BaseSlot)],
            Ends = [.. falloffs.Select(falloff => end += falloff.Shares.Count)],
            Shares = [.. falloffs.SelectMany(falloff => falloff.Shares).Select(share => new TurnShare(
                share.Source.ChannelSlot,
                share.Source.Rest.Translation.ToSingle(),
                share.Source.Rest.Rotation.Inverse.ToSingle(),
                (float)share.Share.Share,
                share.Share.Axes.ToSingle(),
                Pack.Single(share.Share.Moves ?? default)))],
        };
    }

    private static SharedRoll RollOf(TwistWriter twist) => new(
        twist.Start.WorldSlot,
        twist.End.WorldSlot,
        twist.Rest.IsCarriedByEnd,
        (twist.Rest.IsCarriedByEnd ? twist.Rest.EndTurn.Inverse : Quaterniond.Identity).ToSingle(),
        (twist.Rest.IsCarriedByEnd ? Quaterniond.Identity : twist.Rest.EndTurn.Inverse).ToSingle(),
        twist.Rest.Axis.ToSingle(),
        (float)twist.Joint.Share,
        twist.Joint.Turn.ToSingle());

    private static AimUp? UpOf(AimWriter aim) => aim is { Rest: { Side: { } side, Along: var along, Up.Axis: var axis }, Up: { } node }
        ? new AimUp(node.WorldSlot, axis is { } given ? Vector3d.Unit(given).ToSingle() : null, AimedNode.Frame(along, side).Inverse.ToSingle())
        : null;

    private TurnTargets TargetsOf(IReadOnlyList<TurnWriter> writers) => new()
    {
        Channels = [.. writers.Select(writer => slots.ChannelsOf(writer.Target, writer))],
        Bases = [.. writers.Select(writer => Slots.WorldOf(writer.Target.Stand.Root))],
        Placements = Pack.Frames([.. writers.Select(writer => writer.Target.Stand.Offset)]),
        RestScales = Pack.Vectors([.. writers.Select(writer => writer.Target.Rest.Scale)]),
    };
}
