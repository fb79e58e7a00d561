using System.Runtime.CompilerServices;

namespace Condyle.Runtime.Kernels;

/// <summary>
/// Angles without roots of unity, square roots and branches, as polynomials in squares. They were fitted to the functions in forty digits by Remez' exchange
/// (Remez 1934); the largest relative error of each, before the rounding of a float, stands beside it.
/// </summary>
internal static class Arc<TLane>
    where TLane : struct, ILane<TLane>
{
    /// <summary>θ² from y = sin²(θ/2), for θ from 0 to a quarter turn: 4·arcsin²(√y). Error 5.9e-9.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static TLane Squared(TLane y)
    {
        var sum = TLane.MultiplyAdd(TLane.All(1.4992057085037231f), y, TLane.All(-1.6930495500564575f));
        sum = TLane.MultiplyAdd(sum, y, TLane.All(1.3253300189971924f));
        sum = TLane.MultiplyAdd(sum, y, TLane.All(-0.12902167439460754f));
        sum = TLane.MultiplyAdd(sum, y, TLane.All(0.3957572877407074f));
        sum = TLane.MultiplyAdd(sum, y, TLane.All(0.4498155117034912f));
        sum = TLane.MultiplyAdd(sum, y, TLane.All(0.7114868760108948f));
        sum = TLane.MultiplyAdd(sum, y, TLane.All(1.333325982093811f));
        return y * TLane.MultiplyAdd(sum, y, TLane.All(4));
    }

    /// <summary>sin θ / θ from θ², for θ up to a quarter turn. Error 2.2e-11.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static TLane Sine(TLane squared)
    {
        var sum = TLane.MultiplyAdd(TLane.All(-2.3868340193189397e-08f), squared, TLane.All(2.7523969947651494e-06f));
        sum = TLane.MultiplyAdd(sum, squared, TLane.All(-0.0001984083210118115f));
        sum = TLane.MultiplyAdd(sum, squared, TLane.All(0.008333330973982811f));
        sum = TLane.MultiplyAdd(sum, squared, TLane.All(-0.1666666716337204f));
        return TLane.MultiplyAdd(sum, squared, TLane.All(1));
    }

    /// <summary>cos θ from θ², for θ up to a quarter turn. Error 2.2e-10.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static TLane Cosine(TLane squared)
    {
        var sum = TLane.MultiplyAdd(TLane.All(-2.605149234113924e-07f), squared, TLane.All(2.476016197761055e-05f));
        sum = TLane.MultiplyAdd(sum, squared, TLane.All(-0.0013888361863791943f));
        sum = TLane.MultiplyAdd(sum, squared, TLane.All(0.04166663810610771f));
        sum = TLane.MultiplyAdd(sum, squared, TLane.All(-0.5f));
        return TLane.MultiplyAdd(sum, squared, TLane.All(1));
    }
}
