namespace Condyle.Runtime.Kernels.One;

/// <summary>Drives by channels: local = (base · placement)⁻¹ · source · offset.</summary>
internal static class DriveKernel
{
    public static void Run(DriveBatch batch, Buffers pose)
    {
        for (var i = 0; i < batch.Channels.Length; i++)
        {
            var (channel, scale) = (batch.Channels[i], batch.RestScales.Constant(i));
            var local = (pose.Worlds.Wide(batch.Sources[i]) * batch.Offsets.Constant(i)).In(batch.Stands.Frame(i, pose));
            pose.Moves.Set(channel, local.Origin);
            pose.Turns.Set(channel, local.TurnFor(scale));
            pose.Scales.Set(channel, batch.WritesScale[i] ? local.ScaleFor(scale) : scale);
        }
    }
}
