using System.Runtime.CompilerServices;
using Lane = System.Runtime.Intrinsics.Vector128<float>;
using Lanes = System.Runtime.Intrinsics.Vector128;

namespace Condyle.Runtime.Kernels.One;

/// <summary>How far the tip of two bones goes towards its goal, and by what factor the bones lengthen, for each of several rigs.</summary>
/// <remarks>
/// With d the goal's distance, L the bones' length and h = L − s the hard range: r = d up to h, and r = L − s·e^−(d − h)/s beyond it (common practice, no source).
/// The hard range ends no nearer than where the tip rests. The factor is 1 + w·(min(d / r, most) − 1).
/// </remarks>
internal struct WideReach
{
    /// <summary>The distance r.</summary>
    public Lane Distance;

    /// <summary>What it is short of L.</summary>
    public Lane Short;

    public Lane Factor;

    /// <inheritdoc cref="RestDistance"/>
    /// <remarks>
    /// A limb that rests bent hardly needs that, and would stand still while its goal leaves the place of rest. With ε the rounding and b what the rest is short of straight,
    /// or beyond folded, the distance settles within ε·min(1, <see cref="RestDistance.Bent"/>·ε / b).
    /// </remarks>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane Settle(Lane distance, Lane atRest, Lane first, Lane second, Lane farOut)
    {
        var rounding = farOut * Lanes.Create(RestDistance.Rounding);
        var bent = rounding * Lanes.Create(RestDistance.Bent);
        var rest = Lanes.MinNative(first + second - atRest, atRest - Lanes.Abs(first - second));
        var isAtRest = Lanes.LessThanOrEqual(Lanes.Abs(distance - atRest) * Lanes.MaxNative(rest, bent), rounding * bent);
        return Lanes.ConditionalSelect(isAtRest, atRest, distance);
    }

    /// <summary>Without softness and stretch: the nearest distance that the bones reach.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static WideReach Plain(Lane goal, Lane atRest, Lane first, Lane second)
    {
        var outer = Lanes.MaxNative(first + second, atRest);
        var distance = Lanes.MinNative(outer, Lanes.MaxNative(goal, Lanes.MinNative(Lanes.Abs(first - second), atRest)));
        return new() { Distance = distance, Short = outer - distance, Factor = Lanes.Create(1f) };
    }

    /// <param name="stretch">What limits it.</param>
    /// <param name="goal">The distance d.</param>
    /// <param name="atRest">The tip's distance, unsolved.</param>
    /// <param name="first">The length of the first bone.</param>
    /// <param name="second">The length of the second.</param>
    [MethodImpl(MethodImplOptions.NoInlining)]
    public static WideReach Of(WideStretch stretch, Lane goal, Lane atRest, Lane first, Lane second)
    {
        var inner = Lanes.MinNative(Lanes.Abs(first - second), atRest);
        var outer = Lanes.MaxNative(first + second, atRest);
        var hard = Lanes.MaxNative(outer - (stretch.Softness * (first + second)), atRest);
        var isHard = Lanes.LessThanOrEqual(goal, hard);
        var within = Lanes.MaxNative(goal, inner);
        var soft = outer - hard;
        var beyond = Lanes.ConditionalSelect(Lanes.LessThan(Lanes.Create(0f), soft), soft * Lanes.Exp((hard - goal) / soft), Lanes.Create(0f));
        var distance = Lanes.ConditionalSelect(isHard, within, outer - beyond);
        var one = Lanes.Create(1f);
        var isShort = Lanes.LessThan(distance, goal) & Lanes.LessThan(Lanes.Create(Rotation.Tiny), distance);
        var weight = Lanes.MinNative(Lanes.MaxNative(stretch.Stretch, Lanes.Create(0f)), one);
        var factor = Lanes.FusedMultiplyAdd(weight, Lanes.MinNative(goal / distance, stretch.Most) - one, one);
        return new()
        {
            Distance = distance,
            Short = Lanes.ConditionalSelect(isHard, outer - within, beyond),
            Factor = Lanes.ConditionalSelect(isShort, factor, one),
        };
    }
}
