using System.Runtime.CompilerServices;

namespace Condyle.Runtime.Kernels.One;

/// <summary>Blends without scale on the way: frame = the average of the sources, channels = (base · placement)⁻¹ · frame.</summary>
internal static class MeetKernel
{
    [MethodImpl(MethodImplOptions.AggressiveOptimization | MethodImplOptions.NoInlining)]
    public static void Run(MeetBatch batch, Buffers pose)
    {
        var frames = pose.Frames.Registers;
        var channels = pose.Each<Meeting>();
        foreach (ref readonly var item in batch.Items.AsSpan())
        {
            var mean = Mix.Mean(batch.Sources.AsSpan(item.FirstSource, item.EndSource - item.FirstSource), batch.IsChain, pose, out var isThere);
            if (batch.IsChain)
                mean = (frames[item.Before] * mean).Trued();
            var stand = frames[item.Target.Stand.Base];
            if (batch.IsPlaced)
                stand *= WideRigid.All(item.Target.Stand.Placement);
            if (!Rigs.Every(isThere))
                mean = WideRigid.Choose(isThere, mean, (stand * WideRigid.All(item.Rest)).Trued());
            frames[item.Target.Frame] = mean;
            if (batch.WritesChannels)
                channels.Give(item.Target.Channel, mean.In(stand), batch.LeavesChannels);
        }
    }
}
