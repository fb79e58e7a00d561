using System.Runtime.CompilerServices;
using Lane = System.Runtime.Intrinsics.Vector128<float>;
using Lanes = System.Runtime.Intrinsics.Vector128;

namespace Condyle.Runtime.Kernels.One;

/// <summary>
/// Angles without roots of unity, square roots and branches, as polynomials in squares. They were fitted to the functions in forty digits by Remez' exchange
/// (Remez 1934); the largest relative error of each, before the rounding of a float, stands beside it.
/// </summary>
internal static class Arc
{
    /// <summary>θ² from y = sin²(θ/2), for θ from 0 to a quarter turn: 4·arcsin²(√y). Error 5.9e-9.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane Squared(Lane y)
    {
        var sum = Lanes.FusedMultiplyAdd(Lanes.Create(1.4992057085037231f), y, Lanes.Create(-1.6930495500564575f));
        sum = Lanes.FusedMultiplyAdd(sum, y, Lanes.Create(1.3253300189971924f));
        sum = Lanes.FusedMultiplyAdd(sum, y, Lanes.Create(-0.12902167439460754f));
        sum = Lanes.FusedMultiplyAdd(sum, y, Lanes.Create(0.3957572877407074f));
        sum = Lanes.FusedMultiplyAdd(sum, y, Lanes.Create(0.4498155117034912f));
        sum = Lanes.FusedMultiplyAdd(sum, y, Lanes.Create(0.7114868760108948f));
        sum = Lanes.FusedMultiplyAdd(sum, y, Lanes.Create(1.333325982093811f));
        return y * Lanes.FusedMultiplyAdd(sum, y, Lanes.Create(4f));
    }

    /// <summary>sin θ / θ from θ², for θ up to a quarter turn. Error 2.2e-11.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane Sine(Lane squared)
    {
        var sum = Lanes.FusedMultiplyAdd(Lanes.Create(-2.3868340193189397e-08f), squared, Lanes.Create(2.7523969947651494e-06f));
        sum = Lanes.FusedMultiplyAdd(sum, squared, Lanes.Create(-0.0001984083210118115f));
        sum = Lanes.FusedMultiplyAdd(sum, squared, Lanes.Create(0.008333330973982811f));
        sum = Lanes.FusedMultiplyAdd(sum, squared, Lanes.Create(-0.1666666716337204f));
        return Lanes.FusedMultiplyAdd(sum, squared, Lanes.Create(1f));
    }

    /// <summary>θ / sin θ from θ², for θ up to a quarter turn. Error 2.8e-9.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane OverSine(Lane squared)
    {
        var sum = Lanes.FusedMultiplyAdd(Lanes.Create(6.54256439247547e-07f), squared, Lanes.Create(9.396956102136755e-08f));
        sum = Lanes.FusedMultiplyAdd(sum, squared, Lanes.Create(2.5954957891372032e-05f));
        sum = Lanes.FusedMultiplyAdd(sum, squared, Lanes.Create(0.00020454412151593715f));
        sum = Lanes.FusedMultiplyAdd(sum, squared, Lanes.Create(0.0020536198280751705f));
        sum = Lanes.FusedMultiplyAdd(sum, squared, Lanes.Create(0.01944347843527794f));
        sum = Lanes.FusedMultiplyAdd(sum, squared, Lanes.Create(0.16666676104068756f));
        return Lanes.FusedMultiplyAdd(sum, squared, Lanes.Create(1f));
    }

    /// <summary>cos θ from θ², for θ up to a quarter turn. Error 2.2e-10.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane Cosine(Lane squared)
    {
        var sum = Lanes.FusedMultiplyAdd(Lanes.Create(-2.605149234113924e-07f), squared, Lanes.Create(2.476016197761055e-05f));
        sum = Lanes.FusedMultiplyAdd(sum, squared, Lanes.Create(-0.0013888361863791943f));
        sum = Lanes.FusedMultiplyAdd(sum, squared, Lanes.Create(0.04166663810610771f));
        sum = Lanes.FusedMultiplyAdd(sum, squared, Lanes.Create(-0.5f));
        return Lanes.FusedMultiplyAdd(sum, squared, Lanes.Create(1f));
    }
}
