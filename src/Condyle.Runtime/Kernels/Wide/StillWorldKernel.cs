namespace Condyle.Runtime.Kernels.One;

/// <summary>World frames of nodes that stand still on a base that moves: world = base · offset.</summary>
internal static class StillWorldKernel
{
    public static void Run(StillWorldBatch batch, Buffers pose)
    {
        for (var i = 0; i < batch.Worlds.Length; i++)
            pose.Worlds.Set(batch.Worlds[i], pose.Worlds.Wide(batch.Bases[i]) * batch.Offsets.Constant(i));
    }
}
