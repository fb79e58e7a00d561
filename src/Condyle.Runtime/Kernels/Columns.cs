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

    /// <summary>Which rig is meant where one is asked for by itself.</summary>
    public int Lane { get; init; }

    protected float this[int index, int component]
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        get => block[start + (((index * components) + component) * width) + Lane];

        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        set => block[start + (((index * components) + component) * width) + Lane] = value;
    }

    /// <summary>The first number of all. Kernels address the others from it without looking where the column ends: the compiler of rigs gives the slots.</summary>
    public ref float First
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        get => ref Unsafe.Add(ref MemoryMarshal.GetArrayDataReference(block), start);
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
}

/// <summary>Vectors.</summary>
internal sealed class Vectors(float[] block, int start, int count, int width) : Column(block, start, count, Components, width)
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
}

/// <summary>Rotations, as unit quaternions.</summary>
internal sealed class Rotations(float[] block, int start, int count, int width) : Column(block, start, count, Components, width)
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
}

/// <summary>Frames.</summary>
internal sealed class Affines(float[] block, int start, int count, int width) : Column(block, start, count, Components, width)
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

    private Vector3 Vector(int index, int component) => new(base[index, component], base[index, component + 1], base[index, component + 2]);

    private void Put(int index, int component, Vector3 value) =>
        (base[index, component], base[index, component + 1], base[index, component + 2]) = (value.X, value.Y, value.Z);
}

/// <summary>Frames without scale and shear.</summary>
internal sealed class Rigids(float[] block, int start, int count, int width) : Column(block, start, count, Components, width)
{
    public const int Components = Vectors.Components + Rotations.Components;

    public Rigid this[int index]
    {
        get => new(new(base[index, 0], base[index, 1], base[index, 2]), new(base[index, 3], base[index, 4], base[index, 5], base[index, 6]));
        set
        {
            (base[index, 0], base[index, 1], base[index, 2]) = (value.Origin.X, value.Origin.Y, value.Origin.Z);
            (base[index, 3], base[index, 4], base[index, 5], base[index, 6]) = (value.Turn.X, value.Turn.Y, value.Turn.Z, value.Turn.W);
        }
    }
}
