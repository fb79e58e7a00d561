using System.Runtime.CompilerServices;

namespace Condyle.Runtime.Kernels;

/// <summary>A frame without scale and shear, for each of several rigs.</summary>
internal readonly struct WideRigid<TLane>(WideVector<TLane> origin, WideTurn<TLane> turn)
    where TLane : struct, ILane<TLane>
{
    public readonly WideVector<TLane> Origin = origin;
    public readonly WideTurn<TLane> Turn = turn;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static WideRigid<TLane> World(int slot, Buffers pose) => new(pose.Worlds.Origin<TLane>(slot), pose.WorldTurns.Wide<TLane>(slot));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static WideRigid<TLane> operator *(in WideRigid<TLane> outer, in WideRigid<TLane> inner) =>
        new(outer.Origin + outer.Turn.Rotate(inner.Origin), outer.Turn * inner.Turn);

    /// <summary>This frame as it is seen in another one: outer⁻¹ · this.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public WideRigid<TLane> In(in WideRigid<TLane> outer)
    {
        var back = outer.Turn.Inverse;
        return new(back.Rotate(Origin - outer.Origin), back * Turn);
    }
}
