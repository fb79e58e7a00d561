using System.Runtime.CompilerServices;

namespace Condyle.Runtime.Kernels.One;

/// <summary>Drives by channels without scale on the way: frame = source · offset, channels = (base · placement)⁻¹ · frame.</summary>
internal static class FollowKernel
{
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public static void Run(FollowBatch batch, Buffers pose)
    {
        var frames = pose.Frames.Registers;
        var channels = new WideChannels(pose);
        foreach (ref readonly var item in batch.Items.AsSpan())
        {
            var frame = (frames[item.Source] * WideRigid.All(item.Offset)).Trued();
            frames[item.Target.Frame] = frame;
            if (batch.WritesChannels)
                channels[item.Target.Channel] = frame.In(frames.Of(item.Target.Stand, batch.IsPlaced)).Trued();
        }
    }
}
