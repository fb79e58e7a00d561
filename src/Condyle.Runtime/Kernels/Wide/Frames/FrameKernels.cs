using System.Runtime.CompilerServices;

namespace Condyle.Runtime.Kernels.One;

/// <summary>World frames of nodes that stand still on a base that moves: frame = base · offset.</summary>
internal static class StillFrameKernel
{
    [MethodImpl(MethodImplOptions.AggressiveOptimization | MethodImplOptions.NoInlining)]
    public static void Run(StillFrameBatch batch, Buffers pose)
    {
        var items = Rigs.Of(batch.Items);
        var frames = pose.Frames.Each<StillFrame>();
        for (var i = 0; i < items.Length; i += Rigs.Step)
        {
            ref readonly var item = ref items[i];
            frames[item.Frame] = (frames[item.Base] * Each<StillFrame>.Rigid(item.Offset)).Trued();
        }
    }
}

/// <summary>World frames of nodes with channels: frame = base · T · R.</summary>
internal static class ChannelFrameKernel
{
    [MethodImpl(MethodImplOptions.AggressiveOptimization | MethodImplOptions.NoInlining)]
    public static void Run(ChannelFrameBatch batch, Buffers pose)
    {
        var items = Rigs.Of(batch.Items);
        var frames = pose.Frames.Each<ChannelFrame>();
        var channels = pose.Each<ChannelFrame>();
        var isTrued = batch.IsTrued;
        for (var i = 0; i < items.Length; i += Rigs.Step)
        {
            ref readonly var item = ref items[i];
            var frame = frames[item.Base] * channels[item.Channel];
            frames[item.Frame] = isTrued ? frame.Trued() : frame;
        }
    }
}

/// <summary>World frames of nodes with channels behind a placement: frame = base · placement · T · R.</summary>
internal static class PlacedFrameKernel
{
    [MethodImpl(MethodImplOptions.AggressiveOptimization | MethodImplOptions.NoInlining)]
    public static void Run(PlacedFrameBatch batch, Buffers pose)
    {
        var items = Rigs.Of(batch.Items);
        var frames = pose.Frames.Each<PlacedFrame>();
        var channels = pose.Each<PlacedFrame>();
        var isTrued = batch.IsTrued;
        for (var i = 0; i < items.Length; i += Rigs.Step)
        {
            ref readonly var item = ref items[i];
            var frame = frames[item.Base] * (Each<PlacedFrame>.Placement(item.Placement) * channels[item.Channel]);
            frames[item.Frame] = isTrued ? frame.Trued() : frame;
        }
    }
}
