using Lane = System.Runtime.Intrinsics.Vector128<float>;
using Lanes = System.Runtime.Intrinsics.Vector128;

namespace Condyle.Runtime.Kernels.One;

/// <summary>Measured angles: 2·atan2(sine, cosine) of the half angle about an axis.</summary>
/// <remarks>With sine and cosine made of length one together, the half angle θ is its sine times θ / sin θ, and θ² comes from the chord to no turn.</remarks>
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
        var (zero, one, tiny) = (Lane.Zero, Lanes.Create(1f), Lanes.Create(Rotation.Tiny));
        var isBackwards = Lanes.LessThan(cosine, zero) | (Lanes.Equals(cosine, zero) & Lanes.LessThan(sine, zero));
        var length = Lanes.Sqrt(Lanes.FusedMultiplyAdd(sine, sine, cosine * cosine));
        var over = Lanes.ConditionalSelect(isBackwards, -one, one) / Lanes.MaxNative(length, tiny);
        var (s, c) = (sine * over, Lanes.FusedMultiplyAdd(cosine, over, -one));
        var half = s * Arc.OverSine(Arc.Squared(Lanes.FusedMultiplyAdd(s, s, c * c) * Lanes.Create(0.25f)));
        return Lanes.ConditionalSelect(Lanes.LessThan(tiny, length), half * Lanes.Create(2 * Degrees), Lanes.Create(180f));
    }
}
