using System.Numerics;
using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;

namespace Condyle.Runtime.Kernels.EightNodes;

/// <summary>The constants of eight items. A vector is read with the number that follows it, so it can't be the last in an item.</summary>
internal static class Each<TItem>
    where TItem : struct
{
    /// <summary>How many numbers further the next item is.</summary>
    public static int Step
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        get => Unsafe.SizeOf<TItem>() / sizeof(float);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Vector256<float> Number(in float value)
    {
        ref var first = ref Unsafe.AsRef(in value);
        return Vector256.Create(
            first,
            Unsafe.Add(ref first, Step),
            Unsafe.Add(ref first, 2 * Step),
            Unsafe.Add(ref first, 3 * Step),
            Unsafe.Add(ref first, 4 * Step),
            Unsafe.Add(ref first, 5 * Step),
            Unsafe.Add(ref first, 6 * Step),
            Unsafe.Add(ref first, 7 * Step));
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static WideVector Vector(in Vector3 value) => Rows.Take(ref Unsafe.As<Vector3, float>(ref Unsafe.AsRef(in value)), Step).Vector;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static WideTurn Turn(in Quaternion value) => Rows.Take(ref Unsafe.As<Quaternion, float>(ref Unsafe.AsRef(in value)), Step);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static WideRigid Rigid(in Rigid value) => new() { Origin = Vector(value.Origin), Turn = Turn(value.Turn) };

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static WidePlacement Placement(in Placement value) => new()
    {
        Axes = new(Vector(value.Axes.X), Vector(value.Axes.Y), Vector(value.Axes.Z), Vector(value.Axes.Origin)),
        Turn = Turn(value.Turn),
    };
}

/// <summary>Columns as the slots that eight items name.</summary>
internal static class EachAccess
{
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static WideChannels Each<TItem>(this Buffers pose)
        where TItem : struct => new(ref pose.Moves.First, ref pose.Turns.First, EightNodes.Each<TItem>.Step);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static WideNumbers Each<TItem>(this Numbers column)
        where TItem : struct => new(ref column.First, EightNodes.Each<TItem>.Step);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static WideRigids Each<TItem>(this Rigids column)
        where TItem : struct => new(ref column.First, EightNodes.Each<TItem>.Step);
}
