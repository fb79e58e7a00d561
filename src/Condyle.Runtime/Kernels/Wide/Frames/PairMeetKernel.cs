using System.Runtime.CompilerServices;

namespace Condyle.Runtime.Kernels.One;

/// <summary>Blends of two without scale on the way: frame = from the first source to the second by its weight, channels = (base · placement)⁻¹ · frame.</summary>
internal static class PairMeetKernel
{
    public static void Run(PairMeetBatch batch, Buffers pose)
    {
        if (batch.IsChain)
            Chains(batch, pose);
        else
            Lone(batch, pose);
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization | MethodImplOptions.NoInlining)]
    private static void Lone(PairMeetBatch batch, Buffers pose)
    {
        var items = Rigs.Of(batch.Items);
        var frames = pose.Frames.Each<PairMeeting>();
        var weights = pose.Weights.Each<PairMeeting>();
        var channels = pose.Each<PairMeeting>();
        for (var i = 0; i < items.Length; i += Rigs.Step)
        {
            ref readonly var item = ref items[i];
            var mean = WideRigid.Between(frames[item.First.Frame], frames[item.Second.Frame], weights[item.Weight]);
            frames[item.Target.Frame] = mean;
            if (batch.WritesChannels && !batch.IsPlaced)
                channels.Give(item.Target.Channel, mean.In(frames[item.Target.Stand.Base]), batch.LeavesChannels);
        }

        if (batch.WritesChannels && batch.IsPlaced)
            Write(batch, pose);
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization | MethodImplOptions.NoInlining)]
    private static void Chains(PairMeetBatch batch, Buffers pose)
    {
        var items = Rigs.Of(batch.Items);
        var frames = pose.Frames.Each<PairMeeting>();
        var weights = pose.Weights.Each<PairMeeting>();
        for (var i = 0; i < items.Length; i += Rigs.Step)
        {
            ref readonly var item = ref items[i];
            var first = frames[item.First.Frame].In(frames[item.First.Before]);
            var second = frames[item.Second.Frame].In(frames[item.Second.Before]);
            frames[item.Target.Frame] = (frames[item.Before] * WideRigid.Between(first, second, weights[item.Weight])).Trued();
        }

        if (batch.WritesChannels)
            Write(batch, pose);
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization | MethodImplOptions.NoInlining)]
    private static void Write(PairMeetBatch batch, Buffers pose)
    {
        var items = Rigs.Of(batch.Items);
        var frames = pose.Frames.Each<PairMeeting>();
        var channels = pose.Each<PairMeeting>();
        for (var i = 0; i < items.Length; i += Rigs.Step)
        {
            ref readonly var item = ref items[i];
            var stand = frames[item.Target.Stand.Base];
            if (batch.IsPlaced)
                stand *= Each<PairMeeting>.Rigid(item.Target.Stand.Placement);
            channels.Give(item.Target.Channel, frames[item.Target.Frame].In(stand), batch.LeavesChannels);
        }
    }
}
