using System.Numerics;
using System.Runtime.CompilerServices;
using Lane = System.Runtime.Intrinsics.Vector128<float>;
using Lanes = System.Runtime.Intrinsics.Vector128;

namespace Condyle.Runtime.Kernels.One;

/// <summary>The constants of an item, which are the same for all rigs.</summary>
internal static class Each<TItem>
    where TItem : struct
{
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane Number(in float value) => Lanes.Create(value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static WideVector Vector(in Vector3 value) => WideVector.All(value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static WideTurn Turn(in Quaternion value) => WideTurn.All(value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static WideRigid Rigid(in Rigid value) => WideRigid.All(value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static WidePlacement Placement(in Placement value) => new() { Axes = WideAffine.All(value.Axes), Turn = WideTurn.All(value.Turn) };
}

/// <summary>Columns as the slots that the items name.</summary>
internal static class EachAccess
{
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static WideChannels Each<TItem>(this Buffers pose)
        where TItem : struct => new(pose);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static WideNumbers Each<TItem>(this Numbers column)
        where TItem : struct => column.Registers;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static WideRigids Each<TItem>(this Rigids column)
        where TItem : struct => column.Registers;
}
