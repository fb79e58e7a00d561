using System.Runtime.CompilerServices;
using Lane = System.Runtime.Intrinsics.Vector128<float>;

namespace Condyle.Runtime.Kernels.One;

/// <summary>A frame without scale and shear, for each of several rigs.</summary>
internal struct WideRigid
{
    public WideVector Origin;
    public WideTurn Turn;

    public readonly WideAffine Axes
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        get => Turn.At(Origin);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static WideRigid All(in Rigid value) => new() { Origin = WideVector.All(value.Origin), Turn = WideTurn.All(value.Turn) };

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static WideRigid operator *(in WideRigid outer, in WideRigid inner) => new()
    {
        Origin = outer.Turn.Rotate(inner.Origin, outer.Origin),
        Turn = outer.Turn * inner.Turn,
    };

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static WideRigid Choose(Lane mask, in WideRigid a, in WideRigid b) => new()
    {
        Origin = WideVector.Choose(mask, a.Origin, b.Origin),
        Turn = WideTurn.Choose(mask, a.Turn, b.Turn),
    };

    /// <summary>From one frame to another, the amount from 0 to 1: the origin on the line, the rotation on the shortest arc.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static WideRigid Between(in WideRigid a, in WideRigid b, Lane amount) => new()
    {
        Origin = WideVector.MultiplyAdd(b.Origin - a.Origin, amount, a.Origin),
        Turn = WideTurn.Slerp(a.Turn, b.Turn, amount),
    };

    /// <summary>This frame as it is seen in another one: outer⁻¹ · this.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public readonly WideRigid In(in WideRigid outer) => new()
    {
        Origin = outer.Turn.RotateBack(Origin - outer.Origin),
        Turn = WideTurn.Seen(outer.Turn, Turn),
    };

    /// <inheritdoc cref="WideTurn.Trued"/>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public readonly WideRigid Trued() => new() { Origin = Origin, Turn = Turn.Trued() };
}

/// <inheritdoc cref="Placement"/>
internal struct WidePlacement
{
    public WideAffine Axes;
    public WideTurn Turn;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static WideRigid operator *(in WidePlacement outer, in WideRigid inner) => new()
    {
        Origin = outer.Axes.Point(inner.Origin),
        Turn = outer.Turn * inner.Turn,
    };
}
