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
            var written = batch.Writes[i];
            pose.Moves.Set(channel, Taking(written, Channels.MoveX, Channels.MoveY, Channels.MoveZ, pose.Moves.Wide(channel), local.Origin));
            if ((written & Channels.Turn) != Channels.None)
                pose.Turns.Set(channel, local.TurnFor(scale));
            pose.Scales.Set(channel, Taking(written, Channels.ScaleX, Channels.ScaleY, Channels.ScaleZ, pose.Scales.Wide(channel), batch.WritesScale[i] ? local.ScaleFor(scale) : scale));
        }
    }

    private static WideVector Taking(Channels written, Channels x, Channels y, Channels z, in WideVector own, in WideVector from) => new(
        (written & x) != Channels.None ? from.X : own.X,
        (written & y) != Channels.None ? from.Y : own.Y,
        (written & z) != Channels.None ? from.Z : own.Z);
}
