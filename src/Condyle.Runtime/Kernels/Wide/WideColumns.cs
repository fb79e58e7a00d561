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
        get => Rigs.Load(ref Unsafe.Add(ref first, (nint)slot * Rigs.Width), 0);

        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        set => Rigs.Store(value, ref Unsafe.Add(ref first, (nint)slot * Rigs.Width), 0);
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
        get => Slot.Vector(ref Unsafe.Add(ref first, (nint)slot * Stride), 0);

        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        set => Slot.Put(value, ref Unsafe.Add(ref first, (nint)slot * Stride), 0);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public void Leave(int slot, in WideVector value) => Slot.Leave(value, ref Unsafe.Add(ref first, (nint)slot * Stride));
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
        get => Slot.Turn(ref Unsafe.Add(ref first, (nint)slot * Stride), 0);

        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        set => Slot.Put(value, ref Unsafe.Add(ref first, (nint)slot * Stride), 0);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public void Leave(int slot, in WideTurn value) => Slot.Leave(value, ref Unsafe.Add(ref first, (nint)slot * Stride));
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
            ref var at = ref Unsafe.Add(ref first, (nint)slot * Stride);
            return new() { Origin = Slot.Vector(ref at, 0), Turn = Slot.Turn(ref at, Vectors.Components) };
        }

        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        set
        {
            ref var at = ref Unsafe.Add(ref first, (nint)slot * Stride);
            Slot.Put(value.Origin, ref at, 0);
            Slot.Put(value.Turn, ref at, Vectors.Components);
        }
    }
}

/// <summary>Translation and rotation channels as registers.</summary>
[method: MethodImpl(MethodImplOptions.AggressiveInlining)]
internal readonly ref struct WideChannels(Buffers pose)
{
    private readonly WideVectors moves = pose.Moves.Registers;
    private readonly WideTurns turns = pose.Turns.Registers;
    private readonly bool isFar = pose.IsFar;

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

    /// <summary>
    /// Puts what frames give. If it is left to those who ask after an evaluation, it goes past the cache, if memory is far; otherwise it is brought back to length one,
    /// since frames that come of it would be off by twice as much.
    /// </summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public void Give(int slot, in WideRigid value, bool isLeft)
    {
        if (isLeft && isFar)
        {
            moves.Leave(slot, value.Origin);
            turns.Leave(slot, value.Turn);
        }
        else
        {
            moves[slot] = value.Origin;
            turns[slot] = isLeft ? value.Turn : value.Turn.Trued();
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
            ref var at = ref Unsafe.Add(ref first, (nint)slot * Stride);
            return new(Slot.Vector(ref at, 0), Slot.Vector(ref at, 3), Slot.Vector(ref at, 6), Slot.Vector(ref at, 9));
        }

        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        set
        {
            ref var at = ref Unsafe.Add(ref first, (nint)slot * Stride);
            Slot.Put(value.X, ref at, 0);
            Slot.Put(value.Y, ref at, 3);
            Slot.Put(value.Z, ref at, 6);
            Slot.Put(value.Origin, ref at, 9);
        }
    }
}

/// <summary>Takes what lies from a number on, and puts it there.</summary>
internal static class Slot
{
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static WideVector Vector(ref float first, int at) => new()
    {
        X = Rigs.Load(ref first, at),
        Y = Rigs.Load(ref first, at + 1),
        Z = Rigs.Load(ref first, at + 2),
    };

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static WideTurn Turn(ref float first, int at) => new()
    {
        X = Rigs.Load(ref first, at),
        Y = Rigs.Load(ref first, at + 1),
        Z = Rigs.Load(ref first, at + 2),
        W = Rigs.Load(ref first, at + 3),
    };

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static void Put(in WideVector value, ref float first, int at)
    {
        Rigs.Store(value.X, ref first, at);
        Rigs.Store(value.Y, ref first, at + 1);
        Rigs.Store(value.Z, ref first, at + 2);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static void Put(in WideTurn value, ref float first, int at)
    {
        Rigs.Store(value.X, ref first, at);
        Rigs.Store(value.Y, ref first, at + 1);
        Rigs.Store(value.Z, ref first, at + 2);
        Rigs.Store(value.W, ref first, at + 3);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static void Leave(in WideVector value, ref float first)
    {
        Rigs.Leave(value.X, ref first, 0);
        Rigs.Leave(value.Y, ref first, 1);
        Rigs.Leave(value.Z, ref first, 2);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static void Leave(in WideTurn value, ref float first)
    {
        Rigs.Leave(value.X, ref first, 0);
        Rigs.Leave(value.Y, ref first, 1);
        Rigs.Leave(value.Z, ref first, 2);
        Rigs.Leave(value.W, ref first, 3);
    }
}
