using System.Runtime.CompilerServices;
using Lane = System.Runtime.Intrinsics.Vector128<float>;
using Lanes = System.Runtime.Intrinsics.Vector128;

namespace Condyle.Runtime.Kernels.One;

/// <summary>
/// Angles without roots of unity, square roots and branches, as polynomials in squares. They were fitted to the functions in forty digits by Remez' exchange
/// (Remez 1934); the largest relative error of each with its coefficients as they stand, in floats, but summed exactly, stands beside it. They are summed in pairs and pairs of pairs (Estrin 1960), so that
/// fewer steps wait for each other, and the largest term comes last, as in Horner's scheme.
/// </summary>
internal static class Arc
{
    /// <summary>θ² from y = sin²(θ/2), for θ from 0 to a quarter turn: 4·arcsin²(√y). Error 1.2e-8.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane Squared(Lane y)
    {
        var (y2, one) = (y * y, Line(y, 0.7114868760108948f, 1.333325982093811f));
        var y4 = y2 * y2;
        var low = Lanes.FusedMultiplyAdd(Line(y, 0.3957572877407074f, 0.4498155117034912f), y2, one);
        var high = Lanes.FusedMultiplyAdd(Line(y, 1.4992057085037231f, -1.6930495500564575f), y2, Line(y, 1.3253300189971924f, -0.12902167439460754f));
        return y * Lanes.FusedMultiplyAdd(Lanes.FusedMultiplyAdd(high, y4, low), y, Lanes.Create(4f));
    }

    /// <summary>θ / sin θ from y = 1 − cos θ, for θ from 0 to a quarter turn. Error 7.4e-8.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane OverSineFrom(Lane y)
    {
        var y2 = y * y;
        var y4 = y2 * y2;
        var low = Lanes.FusedMultiplyAdd(Line(y, 0.05464838445186615f, 0.1335681676864624f), y2, Line(y, 0.3333258628845215f, 1f));
        var high = Lanes.FusedMultiplyAdd(Line(y, -0.041166383773088455f, 0.05820668116211891f), y2, Line(y, -0.022947287186980247f, 0.03801295533776283f));
        return Lanes.FusedMultiplyAdd(Lanes.FusedMultiplyAdd(Lanes.Create(0.017147831618785858f), y4, high), y4, low);
    }

    /// <summary>sin θ / θ from θ², for θ up to a quarter turn. Error 6.2e-9.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane Sine(Lane squared)
    {
        var fourth = squared * squared;
        var high = Lanes.FusedMultiplyAdd(Lanes.Create(2.606095677037956e-06f), fourth, Line(squared, -0.00019809776858892292f, 0.008333069272339344f));
        return Lanes.FusedMultiplyAdd(high, fourth, Line(squared, -0.16666659712791443f, 1f));
    }

    /// <summary>θ / sin θ from θ², for θ up to a quarter turn. Error 5.3e-9.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane OverSine(Lane squared)
    {
        var fourth = squared * squared;
        var high = Lanes.FusedMultiplyAdd(Lanes.Create(6.54256439247547e-07f), fourth, Line(squared, 9.396956102136755e-08f, 2.5954957891372032e-05f));
        var low = Lanes.FusedMultiplyAdd(Line(squared, 0.00020454412151593715f, 0.0020536198280751705f), fourth, Line(squared, 0.01944347843527794f, 0.16666676104068756f));
        return Lanes.FusedMultiplyAdd(Lanes.FusedMultiplyAdd(high, fourth * fourth, low), squared, Lanes.Create(1f));
    }

    /// <summary>cos θ from θ², for θ up to a quarter turn, where it is nothing. Error 8.2e-9, of one.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane Cosine(Lane squared)
    {
        var fourth = squared * squared;
        var high = Lanes.FusedMultiplyAdd(Lanes.Create(-2.605149234113924e-07f), fourth, Line(squared, 2.476016197761055e-05f, -0.0013888361863791943f));
        var sum = Lanes.FusedMultiplyAdd(high, fourth, Line(squared, 0.04166663810610771f, -0.5f));
        return Lanes.FusedMultiplyAdd(sum, squared, Lanes.Create(1f));
    }

    /// <summary>x · slope + start.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Lane Line(Lane x, float slope, float start) => Lanes.FusedMultiplyAdd(Lanes.Create(slope), x, Lanes.Create(start));
}
