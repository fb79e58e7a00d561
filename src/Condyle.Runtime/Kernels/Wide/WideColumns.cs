using System.Runtime.CompilerServices;
using Lane = System.Runtime.Intrinsics.Vector128<float>;

namespace Condyle.Runtime.Kernels.One;

/// <summary>A column of numbers as registers: one slot holds those of all rigs.</summary>
[method: MethodImpl(MethodImplOptions.AggressiveInlining)]
internal readonly ref struct WideNumbers(ref float first)
{
    private readonly ref float first = ref first;

    public Lane this[int slot]
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        get => Rigs.Load(ref Unsafe.Add(ref first, slot * Rigs.Width), 0);

        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        set => Rigs.Store(value, ref Unsafe.Add(ref first, slot * Rigs.Width), 0);
    }
}

/// <summary>A column of vectors as registers.</summary>
[method: MethodImpl(MethodImplOptions.AggressiveInlining)]
internal readonly ref struct WideVectors(ref float first)
{
    private const int Stride = Vectors.Components * Rigs.Width;
    private readonly ref float first = ref first;

    public WideVector this[int slot]
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        get => WideVector.Load(ref Unsafe.Add(ref first, slot * Stride), 0);

        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        set => WideVector.Store(value, ref Unsafe.Add(ref first, slot * Stride), 0);
    }
}

/// <summary>A column of rotations as registers.</summary>
[method: MethodImpl(MethodImplOptions.AggressiveInlining)]
internal readonly ref struct WideTurns(ref float first)
{
    private const int Stride = Rotations.Components * Rigs.Width;
    private readonly ref float first = ref first;

    public WideTurn this[int slot]
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        get => WideTurn.Load(ref Unsafe.Add(ref first, slot * Stride), 0);

        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        set => WideTurn.Store(value, ref Unsafe.Add(ref first, slot * Stride), 0);
    }
}

/// <summary>A column of frames without scale as registers.</summary>
[method: MethodImpl(MethodImplOptions.AggressiveInlining)]
internal readonly ref struct WideRigids(ref float first)
{
    private const int Stride = Rigids.Components * Rigs.Width;
    private readonly ref float first = ref first;

    public WideRigid this[int slot]
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        get
        {
            ref var at = ref Unsafe.Add(ref first, slot * Stride);
            return new() { Origin = WideVector.Load(ref at, 0), Turn = WideTurn.Load(ref at, Vectors.Components) };
        }

        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        set
        {
            ref var at = ref Unsafe.Add(ref first, slot * Stride);
            WideVector.Store(value.Origin, ref at, 0);
            WideTurn.Store(value.Turn, ref at, Vectors.Components);
        }
    }

    /// <summary>What channels stand in: base · placement.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public WideRigid Of(in RigidStand stand, bool isPlaced) => isPlaced ? this[stand.Base] * WideRigid.All(stand.Placement) : this[stand.Base];
}

/// <summary>Translation and rotation channels as registers.</summary>
[method: MethodImpl(MethodImplOptions.AggressiveInlining)]
internal readonly ref struct WideChannels(Buffers pose)
{
    private readonly WideVectors moves = pose.Moves.Registers;
    private readonly WideTurns turns = pose.Turns.Registers;

    public WideRigid this[int slot]
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        get => new() { Origin = moves[slot], Turn = turns[slot] };

        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        set
        {
            moves[slot] = value.Origin;
            turns[slot] = value.Turn;
        }
    }
}

/// <summary>A column of frames that may have scale, as registers.</summary>
[method: MethodImpl(MethodImplOptions.AggressiveInlining)]
internal readonly ref struct WideAffines(ref float first)
{
    private const int Stride = Affines.Components * Rigs.Width;
    private readonly ref float first = ref first;

    public WideAffine this[int slot]
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        get
        {
            ref var at = ref Unsafe.Add(ref first, slot * Stride);
            return new(WideVector.Load(ref at, 0), WideVector.Load(ref at, 3), WideVector.Load(ref at, 6), WideVector.Load(ref at, 9));
        }

        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        set
        {
            ref var at = ref Unsafe.Add(ref first, slot * Stride);
            WideVector.Store(value.X, ref at, 0);
            WideVector.Store(value.Y, ref at, 3);
            WideVector.Store(value.Z, ref at, 6);
            WideVector.Store(value.Origin, ref at, 9);
        }
    }
}
