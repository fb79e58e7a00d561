using System.Runtime.CompilerServices;

namespace Condyle.Runtime.Kernels.One;

/// <summary>Blends without scale on the way: frame = the average of the sources, channels = (base · placement)⁻¹ · frame.</summary>
internal static class MeetKernel
{
    public static void Run(MeetBatch batch, Buffers pose)
    {
        if (batch.IsWholePair)
            Pairs(batch, pose);
        else
            Any(batch, pose);
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization | MethodImplOptions.NoInlining)]
    private static void Pairs(MeetBatch batch, Buffers pose)
    {
        var frames = pose.Frames.Registers;
        var weights = pose.Weights.Registers;
        var channels = new WideChannels(pose);
        foreach (ref readonly var item in batch.Items.AsSpan())
        {
            ref readonly var first = ref batch.Sources[item.FirstSource];
            ref readonly var second = ref batch.Sources[item.FirstSource + 1];
            var (a, b) = (frames[first.Frame], frames[second.Frame]);
            if (batch.IsChain)
                (a, b) = (a.In(frames[first.Before]), b.In(frames[second.Before]));
            var mean = WideRigid.Between(a, b, weights[second.Weight]);
            if (batch.IsChain)
                mean = (frames[item.Before] * mean).Trued();
            frames[item.Target.Frame] = mean;
            if (batch.WritesChannels)
                channels[item.Target.Channel] = mean.In(frames.Of(item.Target.Stand, batch.IsPlaced)).Trued();
        }
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization | MethodImplOptions.NoInlining)]
    private static void Any(MeetBatch batch, Buffers pose)
    {
        var frames = pose.Frames.Registers;
        var channels = new WideChannels(pose);
        foreach (ref readonly var item in batch.Items.AsSpan())
        {
            var mean = Mix.Mean(batch.Sources.AsSpan(item.FirstSource, item.EndSource - item.FirstSource), batch.IsChain, pose, out var isThere);
            if (batch.IsChain)
                mean = (frames[item.Before] * mean).Trued();
            var stand = frames.Of(item.Target.Stand, batch.IsPlaced);
            if (!Rigs.Every(isThere))
                mean = WideRigid.Choose(isThere, mean, (stand * WideRigid.All(item.Rest)).Trued());
            frames[item.Target.Frame] = mean;
            if (batch.WritesChannels)
                channels[item.Target.Channel] = mean.In(stand).Trued();
        }
    }
}
