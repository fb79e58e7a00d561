using Condyle.Evaluation;
using Condyle.Runtime.Kernels;

namespace Condyle.Runtime.Compilation;

/// <summary>Gathers nodes or writers of one kind and level into the arrays of a batch.</summary>
internal sealed class BatchBuilder(Slots slots, WeightTable weights)
{
    public Batch Worlds(BatchKey key, IReadOnlyList<PlannedNode> nodes)
    {
        int[] worlds = [.. nodes.Select(node => node.WorldSlot)];
        int[] bases = [.. nodes.Select(node => Slots.WorldOf(node.Stand.Root))];
        int[] channels = [.. nodes.Select(node => node.ChannelSlot)];
        return key.Kind switch
        {
            BatchKind.StillWorld => new StillWorldBatch
            {
                Worlds = worlds,
                Bases = bases,
                Offsets = Frames(nodes, node => node.World.Offset),
                Turns = TurnsOf(key, nodes, node => node.World.Offset),
            },
            BatchKind.ChannelWorld or BatchKind.PlacedWorld => new ChannelWorldBatch
            {
                Worlds = worlds,
                Bases = bases,
                Placements = key.Kind == BatchKind.PlacedWorld ? Frames(nodes, node => node.Stand.Offset) : null,
                Channels = channels,
                Turns = TurnsOf(key, nodes, node => node.Stand.Offset),
            },
            _ => throw new InvalidOperationException($"{key.Kind} is no kind of world batch."),
        };
    }

    public Batch Writers(BatchKey key, IReadOnlyList<Writer> writers) => key.Kind switch
    {
        BatchKind.Drive => Drives(key, [.. writers.Cast<DriveWriter>()]),
        BatchKind.Blend => Blends(key, [.. writers.Cast<BlendWriter>()]),
        BatchKind.ChainBlend => Blends(key, [.. writers.Cast<BlendWriter>()]),
        BatchKind.TwoBone => TwoBones([.. writers.Cast<TwoBoneWriter>()]),
        _ => throw new InvalidOperationException($"{key.Kind} is no kind of writer batch."),
    };

    private DriveBatch Drives(BatchKey key, IReadOnlyList<DriveWriter> drives) => new()
    {
        Channels = [.. drives.Select(drive => slots.ChannelsOf(drive.Target, drive))],
        Stands = StandsOf(key, [.. drives.Select(drive => drive.Target)]),
        Sources = [.. drives.Select(drive => Slots.WorldOf(drive.Source.Root))],
        Offsets = Frames(drives, drive => drive.Source.Offset),
        OffsetTurns = key.IsRigid ? Pack.Rotations([.. drives.Select(drive => drive.Source.Offset.Rotation)]) : null,
        WritesScale = [.. drives.Select(drive => drive.WritesScale)],
        RestScales = Pack.Vectors([.. drives.Select(drive => drive.Target.Rest.Scale)]),
    };

    private BlendBatch Blends(BatchKey key, IReadOnlyList<BlendWriter> blends)
    {
        var isLater = key.Kind == BatchKind.ChainBlend;
        var sources = blends.SelectMany(blend => blend.Sources).ToList();
        var end = 0;
        return new()
        {
            Targets = new()
            {
                Channels = [.. blends.Select(blend => slots.ChannelsOf(blend.Target, blend))],
                Stands = StandsOf(key, [.. blends.Select(blend => blend.Target)]),
                Before = isLater ? [.. blends.Select(blend => Slots.WorldOf(blend.Before))] : null,
                RestMoves = Pack.Vectors([.. blends.Select(blend => blend.Target.Rest.Translation)]),
                RestTurns = Pack.Rotations([.. blends.Select(blend => blend.Target.Rest.Rotation)]),
                RestScales = Pack.Vectors([.. blends.Select(blend => blend.Target.Rest.Scale)]),
            },
            Sources = new()
            {
                Ends = [.. blends.Select(blend => end += blend.Sources.Count)],
                Worlds = [.. sources.Select(source => Slots.WorldOf(source.Node))],
                Before = isLater ? [.. sources.Select(source => Slots.WorldOf(source.Before))] : null,
                Weights = [.. sources.Select(source => weights.SlotOf(source.Weight))],
            },
        };
    }

    private TwoBoneBatch TwoBones(IReadOnlyList<TwoBoneWriter> solvers) => new()
    {
        Bases = [.. solvers.Select(solver => Slots.WorldOf(solver.Joints[0].Stand.Root))],
        Roots = Frames(solvers, solver => solver.Joints[0].Stand.Offset),
        Middles = Frames(solvers, solver => solver.Joints[1].Fixed),
        Tips = Frames(solvers, solver => solver.Joints[2].Fixed),
        Lines = Pack.Vectors([.. solvers.Select(solver => solver.Rest.Line)]),
        Sides = Pack.Vectors([.. solvers.Select(solver => solver.Rest.Side)]),
        Goals = [.. solvers.Select(solver => solver.Goal.WorldSlot)],
        Poles = [.. solvers.Select(solver => solver.Pole?.WorldSlot ?? TwoBoneBatch.NoPole)],
        TipsInGoals = Pack.Rotations([.. solvers.Select(solver => solver.Rest.TipInGoal)]),
        RootChannels = [.. solvers.Select(solver => slots.ChannelsOf(solver.Joints[0], solver))],
        MiddleChannels = [.. solvers.Select(solver => slots.ChannelsOf(solver.Joints[1], solver))],
        TipChannels = [.. solvers.Select(solver => slots.ChannelsOf(solver.Joints[2], solver))],
    };

    private static Stands StandsOf(BatchKey key, IReadOnlyList<PlannedNode> nodes) => new()
    {
        Bases = [.. nodes.Select(node => Slots.WorldOf(node.Stand.Root))],
        Placements = key.IsPlaced ? Frames(nodes, node => node.Stand.Offset) : null,
        PlacementTurns = Pack.Rotations([.. nodes.Select(node => node.Stand.Offset.Rotation)]),
        AreRigid = key.IsRigid,
    };

    private static WorldTurns TurnsOf(BatchKey key, IReadOnlyList<PlannedNode> nodes, Func<PlannedNode, Affine3d> offset) =>
        new(key.KeepsTurns, key.IsRigid, Pack.Rotations([.. nodes.Select(node => offset(node).Rotation)]));

    private static Affines Frames<T>(IReadOnlyList<T> items, Func<T, Affine3d> frame) => Pack.Frames([.. items.Select(frame)]);
}
