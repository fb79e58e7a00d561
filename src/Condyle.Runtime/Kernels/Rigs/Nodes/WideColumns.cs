using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;

namespace Condyle.Runtime.Kernels.EightNodes;

/// <summary>A column of numbers: the slots that eight items name, the first by the given one, the others so many numbers further each.</summary>
[method: MethodImpl(MethodImplOptions.AggressiveInlining)]
internal readonly ref struct WideNumbers(ref float first, int step)
{
    private readonly ref float first = ref first;
    private readonly int step = step;

    public Vector256<float> this[in int slot]
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        get
        {
            ref var at = ref Unsafe.AsRef(in slot);
            return Vector256.Create(
                Unsafe.Add(ref first, at),
                Unsafe.Add(ref first, Unsafe.Add(ref at, step)),
                Unsafe.Add(ref first, Unsafe.Add(ref at, 2 * step)),
                Unsafe.Add(ref first, Unsafe.Add(ref at, 3 * step)),
                Unsafe.Add(ref first, Unsafe.Add(ref at, 4 * step)),
                Unsafe.Add(ref first, Unsafe.Add(ref at, 5 * step)),
                Unsafe.Add(ref first, Unsafe.Add(ref at, 6 * step)),
                Unsafe.Add(ref first, Unsafe.Add(ref at, 7 * step)));
        }
    }
}

/// <summary>A column of frames without scale, as <see cref="WideNumbers"/>.</summary>
[method: MethodImpl(MethodImplOptions.AggressiveInlining)]
internal readonly ref struct WideRigids(ref float first, int step)
{
    private readonly ref float first = ref first;
    private readonly int step = step;

    public WideRigid this[in int slot]
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        get => new()
        {
            Origin = Rows.Take(ref first, ref Unsafe.AsRef(in slot), step, Rigids.Components).Vector,
            Turn = Rows.Take(ref Unsafe.Add(ref first, Vectors.Components), ref Unsafe.AsRef(in slot), step, Rigids.Components),
        };

        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        set
        {
            // The number after the origin is the rotation's first.
            Rows.Put(new() { X = value.Origin.X, Y = value.Origin.Y, Z = value.Origin.Z, W = value.Turn.X }, ref first, ref Unsafe.AsRef(in slot), step, Rigids.Components);
            Rows.Put(value.Turn, ref Unsafe.Add(ref first, Vectors.Components), ref Unsafe.AsRef(in slot), step, Rigids.Components);
        }
    }
}

/// <summary>Translation and rotation channels, as <see cref="WideNumbers"/>.</summary>
[method: MethodImpl(MethodImplOptions.AggressiveInlining)]
internal readonly ref struct WideChannels(ref float moves, ref float turns, int step)
{
    private readonly ref float moves = ref moves;
    private readonly ref float turns = ref turns;
    private readonly int step = step;

    public WideRigid this[in int slot]
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        get => new()
        {
            Origin = Rows.Take(ref moves, ref Unsafe.AsRef(in slot), step, Vectors.Components).Vector,
            Turn = Rows.Take(ref turns, ref Unsafe.AsRef(in slot), step, Rotations.Components),
        };

        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        set
        {
            Rows.Put(value.Origin, ref moves, ref Unsafe.AsRef(in slot), step);
            Rows.Put(value.Turn, ref turns, ref Unsafe.AsRef(in slot), step, Rotations.Components);
        }
    }

    /// <summary>Puts what frames give; memory is never far from one rig.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public void Give(in int slot, in WideRigid value, bool isLeft) => this[slot] = isLeft ? value : value.Trued();
}
