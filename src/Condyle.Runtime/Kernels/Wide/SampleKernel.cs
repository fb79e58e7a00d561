using System.Numerics;
using System.Runtime.CompilerServices;
using Lane = System.Runtime.Intrinsics.Vector128<float>;
using Lanes = System.Runtime.Intrinsics.Vector128;

namespace Condyle.Runtime.Kernels.One;

/// <summary>Reads a channel of all rigs for a bake: whether it is where it rests, and what it is rig by rig.</summary>
internal static class SampleKernel
{
    /// <summary>Whether a vector is no further than a distance from a point in every rig. What is no finite number isn't.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization | MethodImplOptions.NoInlining)]
    public static bool IsNear(Vectors column, int slot, in Vector3 point, float distance) =>
        Rigs.Every(Lanes.LessThanOrEqual((column.Wide(slot) - WideVector.All(point)).LengthSquared, Lanes.Create(distance * distance)));

    /// <summary>Whether a rotation, of either sign, is as near to a unit quaternion.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization | MethodImplOptions.NoInlining)]
    public static bool IsNear(Rotations column, int slot, in Quaternion turn, float distance)
    {
        var (unit, rest) = (column.Wide(slot).Normalized(), WideTurn.All(turn));
        var sign = Lanes.ConditionalSelect(Lanes.LessThan(WideTurn.Dot(unit, rest), Lanes.Create(0f)), Lanes.Create(-1f), Lanes.Create(1f));
        return Rigs.Every(Lanes.LessThanOrEqual(WideTurn.ChordSquared(unit, rest, sign), Lanes.Create(distance * distance)));
    }

    /// <summary>Copies the vectors of the first rigs; false when one of all is no finite number.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization | MethodImplOptions.NoInlining)]
    public static bool TryCopy(Vectors column, int slot, Span<Vector3> into)
    {
        ref var first = ref Unsafe.Add(ref column.First, slot * Vectors.Components * Rigs.Width);
        for (var rig = 0; rig < into.Length; rig++)
            into[rig] = new(Unsafe.Add(ref first, rig), Unsafe.Add(ref first, Rigs.Width + rig), Unsafe.Add(ref first, (2 * Rigs.Width) + rig));
        return Rigs.Every(IsFinite(column.Wide(slot).LengthSquared));
    }

    /// <summary>Copies the rotations of the first rigs, each made a unit quaternion; false when one of all is no rotation.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization | MethodImplOptions.NoInlining)]
    public static bool TryCopy(Rotations column, int slot, Span<Quaternion> into)
    {
        var turn = column.Wide(slot);
        Span<float> units = stackalloc float[Rotations.Components * Rigs.Width];
        ref var first = ref units[0];
        Slot.Put(turn.Normalized(), ref first, 0);
        for (var rig = 0; rig < into.Length; rig++)
            into[rig] = new(Unsafe.Add(ref first, rig), Unsafe.Add(ref first, Rigs.Width + rig), Unsafe.Add(ref first, (2 * Rigs.Width) + rig), Unsafe.Add(ref first, (3 * Rigs.Width) + rig));
        var length = WideTurn.Dot(turn, turn);
        return Rigs.Every(IsFinite(length) & Lanes.LessThan(Lanes.Create(0f), length));
    }

    private static Lane IsFinite(Lane notNegative) => Lanes.LessThan(notNegative, Lanes.Create(float.PositiveInfinity));
}
