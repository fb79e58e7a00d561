namespace Condyle.Runtime.Kernels.One;

/// <summary>World frames of nodes that stand still on a base that moves: world = base · offset.</summary>
internal static class StillWorldKernel
{
    public static void Run(StillWorldBatch batch, Buffers pose)
    {
        var (worlds, bases, turns) = (batch.Worlds, batch.Bases, batch.Turns);
        for (var i = 0; i < worlds.Length; i++)
        {
            var world = pose.Worlds.Wide(bases[i]) * batch.Offsets.Constant(i);
            pose.Worlds.Set(worlds[i], world);
            if (turns.AreRigid)
                pose.WorldTurns.Set(worlds[i], (pose.WorldTurns.Wide(bases[i]) * turns.Offsets.Constant(i)).Trued());
            else if (turns.AreKept)
                pose.WorldTurns.Set(worlds[i], world.Turn);
        }
    }
}
