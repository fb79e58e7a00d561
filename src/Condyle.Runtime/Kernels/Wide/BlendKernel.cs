using Lane = System.Runtime.Intrinsics.Vector128<float>;

namespace Condyle.Runtime.Kernels.One;

/// <summary>Blends: the average of the sources' frames, written where the target's channels stand.</summary>
internal static class BlendKernel
{
    public static void Run(BlendBatch batch, Buffers pose)
    {
        var (targets, source) = (batch.Targets, 0);
        for (var i = 0; i < targets.Count; i++)
        {
            var end = batch.SourceEnds[i];
            var mean = Mix.Mean(batch.Sources.AsSpan(source, end - source), targets.Before is not null, pose, out var isThere);
            Write(targets, i, targets.Before is null ? mean : pose.Frames.Registers[targets.Before[i]] * mean, isThere, pose);
            source = end;
        }
    }

    /// <summary>Writes a frame of the world, scale left out, as channels; the rest where nobody has the target.</summary>
    private static void Write(BlendTargets targets, int i, in WideRigid world, Lane isThere, Buffers pose)
    {
        var (channel, scale) = (targets.Channels[i], targets.RestScales.Constant(i));
        var seen = world.Axes.In(targets.Stands.Frame(i, pose));
        pose.Moves.Set(channel, WideVector.Choose(isThere, seen.Origin, targets.RestMoves.Constant(i)));
        pose.Turns.Set(channel, WideTurn.Choose(isThere, seen.TurnFor(scale), targets.RestTurns.Constant(i)));
        pose.Scales.Set(channel, scale);
    }
}
