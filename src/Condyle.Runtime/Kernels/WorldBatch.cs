namespace Condyle.Runtime.Kernels;

/// <summary>World frames of nodes that stand still on a base that moves: world = base · offset.</summary>
internal sealed class StillWorldBatch : Batch
{
    public required int[] Worlds { get; init; }

    public required int[] Bases { get; init; }

    public required Affines Offsets { get; init; }

    public required WorldTurns Turns { get; init; }

    protected override void RunOne(Buffers pose) => Run<Lane1>(pose);

    protected override void RunEight(Buffers pose) => Run<Lane8>(pose);

    protected override void RunSixteen(Buffers pose) => Run<Lane16>(pose);

    private void Run<TLane>(Buffers pose)
        where TLane : struct, ILane<TLane>
    {
        for (var i = 0; i < Worlds.Length; i++)
        {
            var world = pose.Worlds.Wide<TLane>(Bases[i]) * WideAffine<TLane>.All(Offsets[i]);
            pose.Worlds.Set(Worlds[i], world);
            if (Turns.AreKept)
                pose.WorldTurns.Set(Worlds[i], Turns.AreRigid ? (pose.WorldTurns.Wide<TLane>(Bases[i]) * WideTurn<TLane>.All(Turns.Offsets[i])).Trued() : world.Turn);
        }
    }
}

/// <summary>World frames of nodes with channels: world = base · placement · T · R · S. Exported joints have no placement.</summary>
internal sealed class ChannelWorldBatch : Batch
{
    public required int[] Worlds { get; init; }

    public required int[] Bases { get; init; }

    /// <summary>None: the channels stand right on the base.</summary>
    public required Affines? Placements { get; init; }

    public required int[] Channels { get; init; }

    public required WorldTurns Turns { get; init; }

    protected override void RunOne(Buffers pose) => Run<Lane1>(pose);

    protected override void RunEight(Buffers pose) => Run<Lane8>(pose);

    protected override void RunSixteen(Buffers pose) => Run<Lane16>(pose);

    private void Run<TLane>(Buffers pose)
        where TLane : struct, ILane<TLane>
    {
        for (var i = 0; i < Worlds.Length; i++)
        {
            if (Turns.AreRigid)
                Carry<TLane>(i, pose);
            else
                Multiply<TLane>(i, pose);
        }
    }

    // Without scale on the way the rotation is a product of rotations, and gives the axes.
    private void Carry<TLane>(int i, Buffers pose)
        where TLane : struct, ILane<TLane>
    {
        var turn = pose.WorldTurns.Wide<TLane>(Bases[i]);
        var origin = pose.Moves.Wide<TLane>(Channels[i]);
        if (Placements is not null)
        {
            turn *= WideTurn<TLane>.All(Turns.Offsets[i]);
            origin = WideAffine<TLane>.All(Placements[i]).Point(origin);
        }

        turn = (turn * pose.Turns.Wide<TLane>(Channels[i])).Trued();
        pose.WorldTurns.Set(Worlds[i], turn);
        pose.Worlds.Set(Worlds[i], turn.At(pose.Worlds.Wide<TLane>(Bases[i]).Point(origin)));
    }

    private void Multiply<TLane>(int i, Buffers pose)
        where TLane : struct, ILane<TLane>
    {
        var local = pose.Turns.Wide<TLane>(Channels[i]).At(pose.Moves.Wide<TLane>(Channels[i])).Scaled(pose.Scales.Wide<TLane>(Channels[i]));
        if (Placements is not null)
            local = WideAffine<TLane>.All(Placements[i]) * local;
        var world = pose.Worlds.Wide<TLane>(Bases[i]) * local;
        pose.Worlds.Set(Worlds[i], world);
        if (Turns.AreKept)
            pose.WorldTurns.Set(Worlds[i], world.Turn);
    }
}

/// <summary>How a batch comes by the rotations of its world frames.</summary>
/// <param name="AreKept">Whether somebody reads them.</param>
/// <param name="AreRigid">Whether no frame has scale, so that they are products of rotations.</param>
/// <param name="Offsets">Then the rotations of the placements or offsets.</param>
internal sealed record WorldTurns(bool AreKept, bool AreRigid, Rotations Offsets);
