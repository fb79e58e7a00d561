using System.Runtime.CompilerServices;

namespace Condyle.Runtime.Kernels.One;

/// <summary>World frames of nodes that stand still on a base that moves: frame = base · offset.</summary>
internal static class StillFrameKernel
{
    [MethodImpl(MethodImplOptions.AggressiveOptimization | MethodImplOptions.NoInlining)]
    public static void Run(StillFrameBatch batch, Buffers pose)
    {
        var frames = pose.Frames.Registers;
        foreach (ref readonly var item in batch.Items.AsSpan())
            frames[item.Frame] = (frames[item.Base] * WideRigid.All(item.Offset)).Trued();
    }
}

/// <summary>World frames of nodes with channels: frame = base · placement · T · R.</summary>
internal static class ChannelFrameKernel
{
    public static void Run(ChannelFrameBatch batch, Buffers pose)
    {
        if (batch.IsPlaced)
            Placed(batch.Items, pose);
        else
            Unplaced(batch.Items, pose);
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization | MethodImplOptions.NoInlining)]
    private static void Placed(ReadOnlySpan<ChannelFrame> items, Buffers pose)
    {
        var frames = pose.Frames.Registers;
        var channels = new WideChannels(pose);
        foreach (ref readonly var item in items)
            frames[item.Frame] = (frames[item.Stand.Base] * (WideRigid.All(item.Stand.Placement) * channels[item.Channel])).Trued();
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization | MethodImplOptions.NoInlining)]
    private static void Unplaced(ReadOnlySpan<ChannelFrame> items, Buffers pose)
    {
        var frames = pose.Frames.Registers;
        var channels = new WideChannels(pose);
        foreach (ref readonly var item in items)
            frames[item.Frame] = (frames[item.Stand.Base] * channels[item.Channel]).Trued();
    }
}

/// <summary>From one form of a world frame to the other.</summary>
internal static class FormKernel
{
    [MethodImpl(MethodImplOptions.AggressiveOptimization | MethodImplOptions.NoInlining)]
    public static void Axes(ReadOnlySpan<int> slots, Buffers pose)
    {
        var frames = pose.Frames.Registers;
        var worlds = pose.Worlds.Registers;
        foreach (var slot in slots)
            worlds[slot] = frames[slot].Axes;
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization | MethodImplOptions.NoInlining)]
    public static void Unscaled(ReadOnlySpan<int> slots, Buffers pose)
    {
        var frames = pose.Frames.Registers;
        var worlds = pose.Worlds.Registers;
        foreach (var slot in slots)
            frames[slot] = new() { Origin = worlds[slot].Origin, Turn = worlds[slot].Turn };
    }
}
