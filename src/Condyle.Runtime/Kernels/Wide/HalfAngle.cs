using System.Runtime.CompilerServices;
using Lane = System.Runtime.Intrinsics.Vector128<float>;
using Lanes = System.Runtime.Intrinsics.Vector128;

namespace Condyle.Runtime.Kernels.One;

/// <summary>Half angles of turns about an axis.</summary>
internal static class HalfAngle
{
    /// <summary>Adding and taking it away rounds a float to a whole number.</summary>
    private const float Whole = 3 << 22;

    /// <summary>The half angle in radians, above minus a quarter turn and up to one, from its sine and cosine times any number; of a rotation's two quaternions both give the same.</summary>
    /// <remarks>With sine and cosine made of length one together, the half angle θ is its sine times θ / sin θ, and θ² comes from the chord to no turn.</remarks>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane Of(Lane sine, Lane cosine, out Lane isThere)
    {
        var (zero, one, tiny) = (Lane.Zero, Lanes.Create(1f), Lanes.Create(Rotation.Tiny));
        var isBackwards = Lanes.LessThan(cosine, zero) | (Lanes.Equals(cosine, zero) & Lanes.LessThan(sine, zero));
        var length = Lanes.Sqrt(Lanes.FusedMultiplyAdd(sine, sine, cosine * cosine));
        var over = Lanes.ConditionalSelect(isBackwards, -one, one) / Lanes.MaxNative(length, tiny);
        var (s, c) = (sine * over, Lanes.FusedMultiplyAdd(cosine, over, -one));
        isThere = Lanes.LessThan(tiny, length);
        return s * Arc.OverSine(Arc.Squared(Lanes.FusedMultiplyAdd(s, s, c * c) * Lanes.Create(0.25f)));
    }

    /// <summary>Sine and cosine of a half angle in radians, but for whole turns: those of the rotation, which has two quaternions.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static (Lane Sine, Lane Cosine) Parts(Lane half) => OfRest(Rest(half, MathF.PI, 1 / MathF.PI));

    /// <summary>The same of an angle in degrees; its whole turns are taken out while they are exact.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static (Lane Sine, Lane Cosine) PartsOfDegrees(Lane degrees) => OfRest(Rest(degrees, 360f, 1f / 360) * Lanes.Create(MathF.PI / 360));

    /// <summary>What is left of an angle without its whole turns.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Lane Rest(Lane angle, float turn, float over)
    {
        var whole = Lanes.Create(Whole);
        var turns = Lanes.FusedMultiplyAdd(angle, Lanes.Create(over), whole) - whole;
        return Lanes.FusedMultiplyAdd(turns, Lanes.Create(-turn), angle);
    }

    /// <summary>Rounding can leave more than a quarter turn.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static (Lane Sine, Lane Cosine) OfRest(Lane half)
    {
        var quarter = Lanes.Create(MathF.PI / 2);
        half = Lanes.MaxNative(-quarter, Lanes.MinNative(quarter, half));
        var squared = half * half;
        return (half * Arc.Sine(squared), Arc.Cosine(squared));
    }
}
