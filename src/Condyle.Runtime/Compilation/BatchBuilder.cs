using Condyle.Evaluation;
using Condyle.Runtime.Kernels;

namespace Condyle.Runtime.Compilation;

/// <summary>Gathers nodes or writers of one kind and level into the arrays of a batch.</summary>
internal sealed class BatchBuilder(Slots slots, WeightTable weights)
{
    public Batch Worlds(BatchKind kind, IReadOnlyList<PlannedNode> nodes)
    {
        int[] worlds = [.. nodes.Select(node => node.WorldSlot)];
        int[] bases = [.. nodes.Select(node => Slots.WorldOf(node.Stand.Root))];
        int[] channels = [.. nodes.Select(node => node.ChannelSlot)];
        return kind switch
        {
            BatchKind.StillWorld => new StillWorldBatch { Worlds = worlds, Bases = bases, Offsets = Frames(nodes, node => node.World.Offset) },
            BatchKind.PlacedWorld => new PlacedWorldBatch { Worlds = worlds, Bases = bases, Placements = Frames(nodes, node => node.Stand.Offset), Channels = channels },
            BatchKind.ChannelWorld => new ChannelWorldBatch { Worlds = worlds, Bases = bases, Channels = channels },
            _ => throw new InvalidOperationException($"{kind} is no kind of world batch."),
        };
    }

    public Batch Writers(BatchKind kind, IReadOnlyList<Writer> writers) => kind switch
    {
        BatchKind.Drive => Drives([.. writers.Cast<DriveWriter>()]),
        BatchKind.Blend => Blends([.. writers.Cast<BlendWriter>()]),
        BatchKind.ChainBlend => ChainBlends([.. writers.Cast<BlendWriter>()]),
        BatchKind.TwoBone => TwoBones([.. writers.Cast<TwoBoneWriter>()]),
        _ => throw new InvalidOperationException($"{kind} is no kind of writer batch."),
    };

    private DriveBatch Drives(IReadOnlyList<DriveWriter> drives) => new()
    {
        Channels = [.. drives.Select(drive => slots.ChannelsOf(drive.Target, drive))],
        Bases = [.. drives.Select(drive => Slots.WorldOf(drive.Target.Stand.Root))],
        Placements = Frames(drives, drive => drive.Target.Stand.Offset),
        Sources = [.. drives.Select(drive => Slots.WorldOf(drive.Source.Root))],
        Offsets = Frames(drives, drive => drive.Source.Offset),
        WritesScale = [.. drives.Select(drive => drive.WritesScale)],
        RestScales = Pack.Vectors([.. drives.Select(drive => drive.Target.Rest.Scale)]),
    };

    private BlendBatch Blends(IReadOnlyList<BlendWriter> blends) => new() { Targets = TargetsOf(blends), Sources = SourcesOf(blends) };

    private ChainBlendBatch ChainBlends(IReadOnlyList<BlendWriter> blends) => new()
    {
        Targets = TargetsOf(blends),
        Before = [.. blends.Select(blend => Slots.WorldOf(blend.Before))],
        Sources = SourcesOf(blends),
        SourcesBefore = [.. blends.SelectMany(blend => blend.Sources).Select(source => Slots.WorldOf(source.Before))],
    };

    private BlendTargets TargetsOf(IReadOnlyList<BlendWriter> blends) => new()
    {
        Channels = [.. blends.Select(blend => slots.ChannelsOf(blend.Target, blend))],
        Bases = [.. blends.Select(blend => Slots.WorldOf(blend.Target.Stand.Root))],
        Placements = Frames(blends, blend => blend.Target.Stand.Offset),
        RestMoves = Pack.Vectors([.. blends.Select(blend => blend.Target.Rest.Translation)]),
        RestTurns = Pack.Rotations([.. blends.Select(blend => blend.Target.Rest.Rotation)]),
        RestScales = Pack.Vectors([.. blends.Select(blend => blend.Target.Rest.Scale)]),
    };

    private BlendSources SourcesOf(IReadOnlyList<BlendWriter> blends)
    {
        var end = 0;
        return new()
        {
            Ends = [.. blends.Select(blend => end += blend.Sources.Count)],
            Worlds = [.. blends.SelectMany(blend => blend.Sources).Select(source => Slots.WorldOf(source.Node))],
            Weights = [.. blends.SelectMany(blend => blend.Sources).Select(source => weights.SlotOf(source.Weight))],
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

    private static Affines Frames<T>(IReadOnlyList<T> items, Func<T, Affine3d> frame) => Pack.Frames([.. items.Select(frame)]);
}
