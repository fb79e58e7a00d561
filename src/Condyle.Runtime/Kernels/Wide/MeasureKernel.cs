using Lane = System.Runtime.Intrinsics.Vector128<float>;
using Lanes = System.Runtime.Intrinsics.Vector128;

namespace Condyle.Runtime.Kernels.One;

/// <summary>Measured angles: 2·atan2(sine, cosine) of the half angle about an axis.</summary>
internal static class MeasureKernel
{
    private const float Degrees = 180 / MathF.PI;

    public static void Run(MeasureBatch batch, Buffers pose)
    {
        for (var i = 0; i < batch.Inputs.Length; i++)
        {
            var turn = batch.RestInverses.Constant(i) * pose.Turns.Wide(batch.Channels[i]);
            pose.Inputs.Set(batch.Inputs[i], About(batch.Axes[i] switch { Axis.X => turn.X, Axis.Y => turn.Y, _ => turn.Z }, turn.W));
        }
    }

    private static Lane About(Lane sine, Lane cosine)
    {
        var half = HalfAngle.Of(sine, cosine, out var isThere);
        return Lanes.ConditionalSelect(isThere, half * Lanes.Create(2 * Degrees), Lanes.Create(180f));
    }
}
