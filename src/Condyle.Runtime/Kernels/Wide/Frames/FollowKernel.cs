using System.Runtime.CompilerServices;

namespace Condyle.Runtime.Kernels.One;

/// <summary>Drives by channels without scale on the way: frame = source · offset, channels = (base · placement)⁻¹ · frame.</summary>
internal static class FollowKernel
{
    [MethodImpl(MethodImplOptions.AggressiveOptimization | MethodImplOptions.NoInlining)]
    public static void Run(FollowBatch batch, Buffers pose)
    {
        var items = Rigs.Of(batch.Items);
        var frames = pose.Frames.Each<Follower>();
        var channels = pose.Each<Follower>();
        for (var i = 0; i < items.Length; i += Rigs.Step)
        {
            ref readonly var item = ref items[i];
            var frame = (frames[item.Source] * Each<Follower>.Rigid(item.Offset)).Trued();
            frames[item.Target.Frame] = frame;
            if (!batch.WritesChannels)
                continue;
            var stand = frames[item.Target.Stand.Base];
            if (batch.IsPlaced)
                stand *= Each<Follower>.Rigid(item.Target.Stand.Placement);
            channels.Give(item.Target.Channel, frame.In(stand), batch.LeavesChannels);
        }
    }
}
