namespace Condyle.Runtime.Kernels.One;

/// <summary>Drives by channels: local = (base · placement)⁻¹ · source · offset.</summary>
internal static class DriveKernel
{
    public static void Run(DriveBatch batch, Buffers pose)
    {
        for (var i = 0; i < batch.Channels.Length; i++)
        {
            if (batch.OffsetTurns is not null)
                Carry(batch, batch.OffsetTurns, i, pose);
            else
                Multiply(batch, i, pose);
        }
    }

    private static void Carry(DriveBatch batch, Rotations offsets, int i, Buffers pose)
    {
        var (channel, source) = (batch.Channels[i], batch.Sources[i]);
        var origin = pose.Worlds.Wide(source).Point(batch.Offsets.ConstantOrigin(i));
        var turn = pose.WorldTurns.Wide(source) * offsets.Constant(i);
        pose.Moves.Set(channel, batch.Stands.Frame(i, pose).SeenRigidly(origin));
        pose.Turns.Set(channel, (batch.Stands.Turn(i, pose).Inverse * turn).Trued());
        pose.Scales.Set(channel, batch.RestScales.Constant(i));
    }

    private static void Multiply(DriveBatch batch, int i, Buffers pose)
    {
        var (channel, scale) = (batch.Channels[i], batch.RestScales.Constant(i));
        var local = (pose.Worlds.Wide(batch.Sources[i]) * batch.Offsets.Constant(i)).In(batch.Stands.Frame(i, pose));
        pose.Moves.Set(channel, local.Origin);
        pose.Turns.Set(channel, local.TurnFor(scale));
        pose.Scales.Set(channel, batch.WritesScale[i] ? local.ScaleFor(scale) : scale);
    }
}
