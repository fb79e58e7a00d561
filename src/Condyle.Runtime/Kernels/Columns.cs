using System.Numerics;
using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;

namespace Condyle.Runtime.Kernels;

/// <summary>
/// A column of a pose or of a batch's constants: for each item its components, and of each component the numbers of all rigs side by side.
/// With one rig that is an array of structures, with several a structure of registers.
/// </summary>
/// <param name="block">The numbers.</param>
/// <param name="start">Where in the block the column begins.</param>
/// <param name="count">How many items it has.</param>
/// <param name="components">How many numbers an item has for one rig.</param>
/// <param name="width">How many rigs.</param>
internal abstract class Column(float[] block, int start, int count, int components, int width)
{
    public int Count => count;

    /// <summary>Where the rig begins that is asked for one by one.</summary>
    public int Lane { get; init; }

    protected int Width => width;

    protected float this[int index, int component]
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        get => block[start + (((index * components) + component) * width) + Lane];

        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        set => block[start + (((index * components) + component) * width) + Lane] = value;
    }

    /// <summary>The first number of an item; those of the others follow.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    protected ref float First(int index) => ref MemoryMarshal.GetReference(block.AsSpan(start + (index * components * width), components * width));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    protected static TLane Load<TLane>(ref float first, int component)
        where TLane : struct, ILane<TLane> => TLane.Load(ref Unsafe.Add(ref first, component * TLane.Width));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    protected static void Store<TLane>(TLane value, ref float first, int component)
        where TLane : struct, ILane<TLane> => TLane.Store(value, ref Unsafe.Add(ref first, component * TLane.Width));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    protected static WideVector<TLane> LoadVector<TLane>(ref float first, int component)
        where TLane : struct, ILane<TLane> => new(Load<TLane>(ref first, component), Load<TLane>(ref first, component + 1), Load<TLane>(ref first, component + 2));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    protected static void StoreVector<TLane>(in WideVector<TLane> value, ref float first, int component)
        where TLane : struct, ILane<TLane>
    {
        Store(value.X, ref first, component);
        Store(value.Y, ref first, component + 1);
        Store(value.Z, ref first, component + 2);
    }
}

/// <summary>Numbers.</summary>
internal sealed class Numbers(float[] block, int start, int count, int width) : Column(block, start, count, 1, width)
{
    public float this[int index]
    {
        get => base[index, 0];
        set => base[index, 0] = value;
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public TLane Wide<TLane>(int index)
        where TLane : struct, ILane<TLane> => TLane.Load(ref First(index));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public void Set<TLane>(int index, TLane value)
        where TLane : struct, ILane<TLane> => TLane.Store(value, ref First(index));
}

/// <summary>Vectors.</summary>
internal sealed class Vectors(float[] block, int start, int count, int width) : Column(block, start, count, 3, width)
{
    public const int Components = 3;

    /// <summary>Constants, the same for all rigs.</summary>
    public Vectors(int count)
        : this(new float[count * Components], 0, count, 1)
    {
    }

    public Vector3 this[int index]
    {
        get => new(base[index, 0], base[index, 1], base[index, 2]);
        set => (base[index, 0], base[index, 1], base[index, 2]) = (value.X, value.Y, value.Z);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public WideVector<TLane> Wide<TLane>(int index)
        where TLane : struct, ILane<TLane> => LoadVector<TLane>(ref First(index), 0);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public void Set<TLane>(int index, in WideVector<TLane> value)
        where TLane : struct, ILane<TLane> => StoreVector(value, ref First(index), 0);
}

/// <summary>Rotations, as unit quaternions.</summary>
internal sealed class Rotations(float[] block, int start, int count, int width) : Column(block, start, count, 4, width)
{
    public const int Components = 4;

    /// <inheritdoc cref="Vectors(int)"/>
    public Rotations(int count)
        : this(new float[count * Components], 0, count, 1)
    {
    }

    public Quaternion this[int index]
    {
        get => new(base[index, 0], base[index, 1], base[index, 2], base[index, 3]);
        set => (base[index, 0], base[index, 1], base[index, 2], base[index, 3]) = (value.X, value.Y, value.Z, value.W);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public WideTurn<TLane> Wide<TLane>(int index)
        where TLane : struct, ILane<TLane>
    {
        ref var first = ref First(index);
        return new(Load<TLane>(ref first, 0), Load<TLane>(ref first, 1), Load<TLane>(ref first, 2), Load<TLane>(ref first, 3));
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public void Set<TLane>(int index, in WideTurn<TLane> value)
        where TLane : struct, ILane<TLane>
    {
        ref var first = ref First(index);
        Store(value.X, ref first, 0);
        Store(value.Y, ref first, 1);
        Store(value.Z, ref first, 2);
        Store(value.W, ref first, 3);
    }
}

/// <summary>Frames.</summary>
internal sealed class Affines(float[] block, int start, int count, int width) : Column(block, start, count, 12, width)
{
    public const int Components = 12;

    /// <inheritdoc cref="Vectors(int)"/>
    public Affines(int count)
        : this(new float[count * Components], 0, count, 1)
    {
    }

    public Affine this[int index]
    {
        get => new(Vector(index, 0), Vector(index, 3), Vector(index, 6), Vector(index, 9));
        set
        {
            Put(index, 0, value.X);
            Put(index, 3, value.Y);
            Put(index, 6, value.Z);
            Put(index, 9, value.Origin);
        }
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public WideAffine<TLane> Wide<TLane>(int index)
        where TLane : struct, ILane<TLane>
    {
        ref var first = ref First(index);
        return new(LoadVector<TLane>(ref first, 0), LoadVector<TLane>(ref first, 3), LoadVector<TLane>(ref first, 6), LoadVector<TLane>(ref first, 9));
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public WideVector<TLane> Origin<TLane>(int index)
        where TLane : struct, ILane<TLane> => LoadVector<TLane>(ref First(index), 9);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public void Set<TLane>(int index, in WideAffine<TLane> value)
        where TLane : struct, ILane<TLane>
    {
        ref var first = ref First(index);
        StoreVector(value.X, ref first, 0);
        StoreVector(value.Y, ref first, 3);
        StoreVector(value.Z, ref first, 6);
        StoreVector(value.Origin, ref first, 9);
    }

    private Vector3 Vector(int index, int component) => new(base[index, component], base[index, component + 1], base[index, component + 2]);

    private void Put(int index, int component, Vector3 value) =>
        (base[index, component], base[index, component + 1], base[index, component + 2]) = (value.X, value.Y, value.Z);
}
