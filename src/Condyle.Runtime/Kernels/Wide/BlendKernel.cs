using Lane = System.Runtime.Intrinsics.Vector128<float>;
using Lanes = System.Runtime.Intrinsics.Vector128;

namespace Condyle.Runtime.Kernels.One;

/// <summary>Blends: the average of the sources' frames, written where the target's channels stand.</summary>
internal static class BlendKernel
{
    public static void Run(BlendBatch batch, Buffers pose)
    {
        var (targets, sources) = (batch.Targets, batch.Sources);
        var source = 0;
        for (var i = 0; i < targets.Count; i++)
        {
            var end = sources.Ends[i];
            var mean = end - source == 2
                ? Mix.Two(FrameOf(sources, source, pose), WeightOf(sources, source, pose), FrameOf(sources, source + 1, pose), WeightOf(sources, source + 1, pose), out var isThere)
                : Many(sources, source, end, pose, out isThere);
            Write(targets, i, targets.Before is null ? mean : WideRigid.World(targets.Before[i], pose) * mean, isThere, pose);
            source = end;
        }
    }

    private static WideRigid Many(BlendSources sources, int source, int end, Buffers pose, out Lane isThere)
    {
        var gathered = new Gathered(pose);
        for (; source < end; source++)
            gathered.Add(FrameOf(sources, source, pose), WeightOf(sources, source, pose));
        return gathered.Mean(out isThere);
    }

    /// <summary>A source's weight; one below zero counts as zero.</summary>
    private static Lane WeightOf(BlendSources sources, int source, Buffers pose) => Lanes.MaxNative(Lane.Zero, pose.Weights.Wide(sources.Weights[source]));

    /// <summary>A source's frame without scale: in the world, or in the source joint before it.</summary>
    private static WideRigid FrameOf(BlendSources sources, int source, Buffers pose)
    {
        var world = WideRigid.World(sources.Worlds[source], pose);
        return sources.Before is null ? world : world.In(WideRigid.World(sources.Before[source], pose));
    }

    /// <summary>Writes a frame of the world, scale left out, as channels; the rest where nobody has the target.</summary>
    private static void Write(BlendTargets targets, int i, in WideRigid world, Lane isThere, Buffers pose)
    {
        var (channel, scale) = (targets.Channels[i], targets.RestScales.Constant(i));
        var local = targets.Stands.AreRigid ? SeenRigidly(targets.Stands, i, world, pose) : Seen(targets.Stands, i, world, scale, pose);
        pose.Moves.Set(channel, WideVector.Choose(isThere, local.Origin, targets.RestMoves.Constant(i)));
        pose.Turns.Set(channel, WideTurn.Choose(isThere, local.Turn, targets.RestTurns.Constant(i)));
        pose.Scales.Set(channel, scale);
    }

    private static WideRigid SeenRigidly(Stands stands, int i, in WideRigid world, Buffers pose) =>
        new(stands.Frame(i, pose).SeenRigidly(world.Origin), (stands.Turn(i, pose).Inverse * world.Turn).Trued());

    private static WideRigid Seen(Stands stands, int i, in WideRigid world, in WideVector scale, Buffers pose)
    {
        var seen = world.Turn.At(world.Origin).In(stands.Frame(i, pose));
        return new(seen.Origin, seen.TurnFor(scale));
    }
}
