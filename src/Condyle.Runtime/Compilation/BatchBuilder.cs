using Condyle.Evaluation;
using Condyle.Runtime.Kernels;

namespace Condyle.Runtime.Compilation;

/// <summary>Gathers nodes or writers of one kind and level into the arrays of a batch.</summary>
internal sealed class BatchBuilder(Slots slots, WeightTable weights)
{
    private readonly SolverPacking solvers = new(slots, weights);
    private readonly TurnPacking turns = new(slots);

    public Batch Worlds(BatchKey key, IReadOnlyList<PlannedNode> nodes)
    {
        int[] worlds = [.. nodes.Select(node => node.WorldSlot)];
        int[] bases = [.. nodes.Select(node => Slots.WorldOf(node.Stand.Root))];
        return key.Kind switch
        {
            BatchKind.StillFrame => new StillFrameBatch { Items = new([.. nodes.Select(node => new StillFrame(node.WorldSlot, Slots.WorldOf(node.World.Root), Pack.Rigid(node.World.Offset)))]) },
            BatchKind.ChannelFrame when key.IsPlaced => new PlacedFrameBatch
            {
                Items = new([.. nodes.Select(node => new PlacedFrame(node.WorldSlot, Slots.WorldOf(node.Stand.Root), node.ChannelSlot, Pack.Placement(node.Stand.Offset)))]),
                IsTrued = key.IsTrued,
            },
            BatchKind.ChannelFrame => new ChannelFrameBatch { Items = new([.. nodes.Select(node => new ChannelFrame(node.WorldSlot, Slots.WorldOf(node.Stand.Root), node.ChannelSlot))]), IsTrued = key.IsTrued },
            BatchKind.StillWorld => new StillWorldBatch { Worlds = worlds, Bases = bases, Offsets = Frames(nodes, node => node.World.Offset) },
            BatchKind.ChannelWorld => new ChannelWorldBatch
            {
                Worlds = worlds,
                Bases = bases,
                Placements = key.IsPlaced ? Frames(nodes, node => node.Stand.Offset) : null,
                Channels = [.. nodes.Select(node => node.ChannelSlot)],
            },
            BatchKind.Axes => new AxesBatch { Slots = worlds },
            BatchKind.Unscaled => new UnscaledBatch { Slots = worlds },
            BatchKind.SpaceFrame or BatchKind.Space => ResponsePacking.Spaces(nodes, weights, isRigid: key.Kind == BatchKind.SpaceFrame),
            _ => throw new InvalidOperationException($"{key.Kind} is no kind of world batch."),
        };
    }

    public Batch Writers(BatchKey key, IReadOnlyList<Writer> writers) => key.Kind switch
    {
        BatchKind.Follow => Followers(key, [.. writers.Cast<DriveWriter>()]),
        BatchKind.PairMeet => PairMeetings(key, [.. writers.Cast<BlendWriter>()]),
        BatchKind.Meet => Meetings(key, [.. writers.Cast<BlendWriter>()]),
        BatchKind.Drive => Drives(key, [.. writers.Cast<DriveWriter>()]),
        BatchKind.Blend or BatchKind.ChainBlend => Blends(key, [.. writers.Cast<BlendWriter>()]),
        BatchKind.TwoBoneFrame => new TwoBoneFrameBatch { Limbs = new([.. writers.Cast<TwoBoneWriter>().Select(solvers.Rigid)]), Kind = key.Limbs },
        BatchKind.TwoBone => new TwoBoneBatch { Limbs = [.. writers.Cast<TwoBoneWriter>().Select(solvers.Scaled)], Kind = key.Limbs },
        BatchKind.ManyBone => solvers.ManyBones([.. writers.Cast<ManyBoneWriter>()]),
        BatchKind.CurveChain => solvers.CurveChains([.. writers.Cast<CurveChainWriter>()]),
        BatchKind.Aim => turns.Aims([.. writers.Cast<AimWriter>()]),
        BatchKind.TwistFrame => turns.RigidTwists([.. writers.Cast<TwistWriter>()], key.IsPlaced),
        BatchKind.Twist => turns.Twists([.. writers.Cast<TwistWriter>()]),
        BatchKind.Falloff => TurnPacking.Falloffs([.. writers.Cast<FalloffWriter>()]),
        BatchKind.Measure => ResponsePacking.Measures([.. writers.Cast<MeasureWriter>()]),
        BatchKind.Response => ResponsePacking.Responses([.. writers.Cast<ResponseWriter>()]),
        BatchKind.Morph => ResponsePacking.Morphs([.. writers.Cast<MorphWriter>()]),
        _ => throw new InvalidOperationException($"{key.Kind} is no kind of writer batch."),
    };

    private FollowBatch Followers(BatchKey key, IReadOnlyList<DriveWriter> drives) => new()
    {
        Items = new([.. drives.Select(drive => new Follower(
            TargetOf(drive.Target, drive), Slots.WorldOf(drive.Source.Root), Pack.Rigid(drive.Source.Offset)))]),
        IsPlaced = key.IsPlaced,
        WritesChannels = key.WritesChannels,
        LeavesChannels = key.LeavesChannels,
    };

    private PairMeetBatch PairMeetings(BatchKey key, IReadOnlyList<BlendWriter> blends) => new()
    {
        Items = new([.. blends.Select(blend => new PairMeeting(
            TargetOf(blend.Target, blend),
            Slots.WorldOf(blend.Before),
            PairSourceOf(blend.Sources[0]),
            PairSourceOf(blend.Sources[1]),
            weights.SlotOf(blend.Sources[1].Weight)))]),
        IsChain = key.IsChain,
        IsPlaced = key.IsPlaced,
        WritesChannels = key.WritesChannels,
        LeavesChannels = key.LeavesChannels,
    };

    private MeetBatch Meetings(BatchKey key, IReadOnlyList<BlendWriter> blends)
    {
        var end = 0;
        return new()
        {
            Items = [.. blends.Select(blend => new Meeting(
                TargetOf(blend.Target, blend),
                Pack.Rigid(blend.Target.Rest.ToAffine()),
                Slots.WorldOf(blend.Before),
                end,
                end += blend.Sources.Count))],
            Sources = SourcesOf(blends),
            IsChain = key.IsChain,
            IsPlaced = key.IsPlaced,
            WritesChannels = key.WritesChannels,
            LeavesChannels = key.LeavesChannels,
        };
    }

    private DriveBatch Drives(BatchKey key, IReadOnlyList<DriveWriter> drives) => new()
    {
        Channels = [.. drives.Select(drive => slots.ChannelsOf(drive.Target, drive))],
        Stands = StandsOf(key, [.. drives.Select(drive => drive.Target)]),
        Sources = [.. drives.Select(drive => Slots.WorldOf(drive.Source.Root))],
        Offsets = Frames(drives, drive => drive.Source.Offset),
        Writes = [.. drives.Select(drive => drive.Writes)],
        WritesScale = [.. drives.Select(drive => drive.WritesScale)],
        RestScales = Pack.Vectors([.. drives.Select(drive => drive.Target.Rest.Scale)]),
    };

    private BlendBatch Blends(BatchKey key, IReadOnlyList<BlendWriter> blends)
    {
        var end = 0;
        return new()
        {
            Targets = new()
            {
                Channels = [.. blends.Select(blend => slots.ChannelsOf(blend.Target, blend))],
                Stands = StandsOf(key, [.. blends.Select(blend => blend.Target)]),
                Before = key.Kind == BatchKind.ChainBlend ? [.. blends.Select(blend => Slots.WorldOf(blend.Before))] : null,
                RestMoves = Pack.Vectors([.. blends.Select(blend => blend.Target.Rest.Translation)]),
                RestTurns = Pack.Rotations([.. blends.Select(blend => blend.Target.Rest.Rotation)]),
                RestScales = Pack.Vectors([.. blends.Select(blend => blend.Target.Rest.Scale)]),
            },
            Sources = SourcesOf(blends),
            SourceEnds = [.. blends.Select(blend => end += blend.Sources.Count)],
        };
    }

    private BlendSource[] SourcesOf(IReadOnlyList<BlendWriter> blends) => [.. blends.SelectMany(blend => blend.Sources).Select(source =>
        new BlendSource(Slots.WorldOf(source.Node), Slots.WorldOf(source.Before), weights.SlotOf(source.Weight)))];

    private static PairSource PairSourceOf(BlendInput source) => new(Slots.WorldOf(source.Node), Slots.WorldOf(source.Before));

    private FrameTarget TargetOf(PlannedNode node, Writer writer) =>
        new(node.WorldSlot, slots.ChannelsOf(node, writer), new RigidStand(Slots.WorldOf(node.Stand.Root), Pack.Rigid(node.Stand.Offset)));

    private static Stands StandsOf(BatchKey key, IReadOnlyList<PlannedNode> nodes) => new()
    {
        Bases = [.. nodes.Select(node => Slots.WorldOf(node.Stand.Root))],
        Placements = key.IsPlaced ? Frames(nodes, node => node.Stand.Offset) : null,
    };

    private static Affines Frames<T>(IReadOnlyList<T> items, Func<T, Affine3d> frame) => Pack.Frames([.. items.Select(frame)]);
}
