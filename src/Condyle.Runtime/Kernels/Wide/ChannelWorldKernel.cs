namespace Condyle.Runtime.Kernels.One;

/// <summary>World frames of nodes with channels: world = base · placement · T · R · S.</summary>
internal static class ChannelWorldKernel
{
    public static void Run(ChannelWorldBatch batch, Buffers pose)
    {
        for (var i = 0; i < batch.Worlds.Length; i++)
        {
            if (batch.Turns.AreRigid)
                Carry(batch, i, pose);
            else
                Multiply(batch, i, pose);
        }
    }

    // Without scale on the way the rotation is a product of rotations, and gives the axes.
    private static void Carry(ChannelWorldBatch batch, int i, Buffers pose)
    {
        var (at, on, channel) = (batch.Worlds[i], batch.Bases[i], batch.Channels[i]);
        var turn = pose.WorldTurns.Wide(on);
        var origin = pose.Moves.Wide(channel);
        if (batch.Placements is not null)
        {
            turn *= batch.Turns.Offsets.Constant(i);
            origin = batch.Placements.Constant(i).Point(origin);
        }

        turn = (turn * pose.Turns.Wide(channel)).Trued();
        pose.WorldTurns.Set(at, turn);
        pose.Worlds.Set(at, turn.At(pose.Worlds.Wide(on).Point(origin)));
    }

    private static void Multiply(ChannelWorldBatch batch, int i, Buffers pose)
    {
        var channel = batch.Channels[i];
        var local = pose.Turns.Wide(channel).At(pose.Moves.Wide(channel)).Scaled(pose.Scales.Wide(channel));
        if (batch.Placements is not null)
            local = batch.Placements.Constant(i) * local;
        var world = pose.Worlds.Wide(batch.Bases[i]) * local;
        pose.Worlds.Set(batch.Worlds[i], world);
        if (batch.Turns.AreKept)
            pose.WorldTurns.Set(batch.Worlds[i], world.Turn);
    }
}
