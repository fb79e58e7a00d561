namespace Condyle.Runtime.Kernels.One;

/// <summary>World frames of nodes with channels: world = base · placement · T · R · S.</summary>
internal static class ChannelWorldKernel
{
    public static void Run(ChannelWorldBatch batch, Buffers pose)
    {
        for (var i = 0; i < batch.Worlds.Length; i++)
        {
            var channel = batch.Channels[i];
            var local = pose.Turns.Wide(channel).At(pose.Moves.Wide(channel)).Scaled(pose.Scales.Wide(channel));
            if (batch.Placements is not null)
                local = batch.Placements.Constant(i) * local;
            pose.Worlds.Set(batch.Worlds[i], pose.Worlds.Wide(batch.Bases[i]) * local);
        }
    }
}
