using System.Runtime.CompilerServices;

namespace Condyle.Runtime.Kernels.One;

/// <summary>A frame without scale and shear, for each of several rigs.</summary>
[method: MethodImpl(MethodImplOptions.AggressiveInlining)]
internal readonly struct WideRigid(WideVector origin, WideTurn turn)
{
    public readonly WideVector Origin = origin;
    public readonly WideTurn Turn = turn;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static WideRigid World(int slot, Buffers pose) => new(pose.Worlds.Origin(slot), pose.WorldTurns.Wide(slot));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static WideRigid operator *(in WideRigid outer, in WideRigid inner) =>
        new(outer.Origin + outer.Turn.Rotate(inner.Origin), outer.Turn * inner.Turn);

    /// <summary>This frame as it is seen in another one: outer⁻¹ · this.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public WideRigid In(in WideRigid outer)
    {
        var back = outer.Turn.Inverse;
        return new(back.Rotate(Origin - outer.Origin), back * Turn);
    }
}
