using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;
using System.Runtime.Intrinsics.X86;

namespace Condyle.Runtime.Kernels;

/// <summary>All that changes while a rig is evaluated, for one rig or for several side by side: columns, which the batches of a schedule address by index.</summary>
internal sealed class Buffers
{
    /// <summary>A register of sixteen numbers is a line of the cache, and should lie in one.</summary>
    private const int Line = 64 / sizeof(float);

    private readonly BufferSizes sizes;
    private readonly float[] block;
    private readonly int first;
    private readonly Rigids own;

    /// <param name="sizes">How much room the rig needs.</param>
    /// <param name="width">How many rigs lie side by side: 1, 8 or 16.</param>
    public Buffers(BufferSizes sizes, int width = 1)
        : this(sizes, GC.AllocateArray<float>(((sizes.Numbers + sizes.Room.Numbers) * width) + Line, pinned: true), width, room: null)
    {
        Lanes = width == 1 ? [this] : [.. Enumerable.Range(0, width).Select(lane => new Buffers(sizes, block, width, Room, lane))];
    }

    private Buffers(BufferSizes sizes, float[] block, int width, ChainRoom? room, int lane = 0)
    {
        (this.sizes, this.block, Width) = (sizes, block, width);
        first = LineIn(block);
        var next = first;
        int Take(int numbers)
        {
            var start = next;
            next += numbers * width;
            return start;
        }

        Worlds = new(block, Take(sizes.Worlds * Affines.Components), sizes.Worlds, width) { Lane = lane };
        Frames = own = new(block, Take(sizes.Worlds * Rigids.Components), sizes.Worlds, width) { Lane = lane };
        Moves = new(block, Take(sizes.Channels * Vectors.Components), sizes.Channels, width) { Lane = lane };
        Turns = new(block, Take(sizes.Channels * Rotations.Components), sizes.Channels, width) { Lane = lane };
        Scales = new(block, Take(sizes.Channels * Vectors.Components), sizes.Channels, width) { Lane = lane };
        var inputs = Take(sizes.Inputs + sizes.Weights);
        Inputs = new(block, inputs, sizes.Inputs, width) { Lane = lane };
        Weights = new(block, inputs, sizes.Inputs + sizes.Weights, width) { Lane = lane };
        Morphs = new(block, Take(sizes.Morphs), sizes.Morphs, width) { Lane = lane };
        MixTurns = new(block, Take(sizes.BlendSources * Rotations.Components), sizes.BlendSources, width) { Lane = lane };
        MixWeights = new(block, Take(sizes.BlendSources), sizes.BlendSources, width) { Lane = lane };
        Room = room ?? new(sizes.Room, block, next, width);
        Lanes = [];
    }

    /// <summary>How many rigs lie side by side.</summary>
    public int Width { get; }

    /// <summary>What they take in memory.</summary>
    public long Bytes => (long)block.Length * sizeof(float);

    /// <summary>The rigs one by one.</summary>
    public Buffers[] Lanes { get; }

    /// <summary>
    /// World frames that may have scale, and others whose axes somebody reads: the world's own first, then those that never change, then the others in the order of the schedule.
    /// </summary>
    public Affines Worlds { get; }

    /// <summary>World frames that have no scale, and what others are without it where somebody reads that; each in the slot of its world frame.</summary>
    public Rigids Frames { get; private set; }

    /// <summary>Translation channels: the controls first, then the exported joints, then whatever else is written.</summary>
    public Vectors Moves { get; }

    public Rotations Turns { get; }

    public Vectors Scales { get; }

    /// <summary>Switches, dials and options, which an animator sets, and measured angles.</summary>
    public Numbers Inputs { get; }

    /// <summary>The inputs, which are weights as they are, and after them the weights that are made from them.</summary>
    public Numbers Weights { get; }

    /// <summary>The weights of morph targets.</summary>
    public Numbers Morphs { get; }

    /// <summary>Where a blend gathers its sources; it holds nothing between two blends.</summary>
    public Rotations MixTurns { get; }

    public Numbers MixWeights { get; }

    /// <summary>Where solvers of chains work.</summary>
    public ChainRoom Room { get; }

    public Buffers Copy(int width = 1)
    {
        var copy = new Buffers(sizes, width);
        for (var i = 0; i < sizes.Numbers; i++)
            Array.Fill(copy.block, block[first + i], copy.first + (i * width), width);
        return copy;
    }

    /// <summary>Takes over a single rig.</summary>
    public void CopyFrom(Buffers other)
    {
        for (var i = 0; i < sizes.Numbers; i++)
            block[first + (i * Width) + Worlds.Lane] = other.block[other.first + i];
    }

    /// <summary>Gives a single rig over.</summary>
    public void CopyTo(Buffers other)
    {
        for (var i = 0; i < sizes.Numbers; i++)
            other.block[other.first + i] = block[first + (i * Width) + Worlds.Lane];
    }

    /// <summary>Whether memory is far: it borrows a place for its frames.</summary>
    public bool IsFar => Frames != own;

    /// <summary>Has its frames lie for a while where those of another pose lie, which hold the same constants.</summary>
    public void Borrow(Buffers frames) => Frames = frames.own;

    /// <summary>Brings those that last to its own place again, past the cache: nobody reads them soon.</summary>
    public unsafe void Keep()
    {
        ref var from = ref Frames.First;
        var to = (float*)Unsafe.AsPointer(ref own.First);
        for (var i = 0; i < sizes.Lasting * Rigids.Components * Width; i += Vector256<float>.Count)
            Vector256.LoadUnsafe(ref from, (nuint)i).StoreAlignedNonTemporal(to + i);
        // Such stores may be seen later than those after them, by a game that hands frames over with a flag alone.
        if (Sse.IsSupported)
            Sse.StoreFence();
        Frames = own;
    }

    /// <summary>Asks for translation and rotation channels, so that they are in the cache when they are needed.</summary>
    public void Fetch(ReadOnlySpan<int> channels)
    {
        if (!Sse.IsSupported)
            return;
        foreach (var slot in channels)
        {
            Fetch(ref Moves.First, slot, Vectors.Components * Width);
            Fetch(ref Turns.First, slot, Rotations.Components * Width);
        }
    }

    private static unsafe void Fetch(ref float column, int slot, int numbers)
    {
        for (var at = slot * numbers; at < (slot + 1) * numbers; at += Line)
            Sse.Prefetch1(Unsafe.AsPointer(ref Unsafe.Add(ref column, at)));
    }

    private static unsafe int LineIn(float[] pinned)
    {
        var address = (nuint)Unsafe.AsPointer(ref MemoryMarshal.GetArrayDataReference(pinned)) / sizeof(float);
        return (int)((Line - (address % Line)) % Line);
    }
}

/// <summary>How much room a rig's pose needs. The first of the world frames, as many as last, may be asked for after an evaluation.</summary>
internal readonly record struct BufferSizes(int Channels, int Worlds, int Lasting, int Inputs, int Weights, int Morphs, int BlendSources, RoomSizes Room)
{
    /// <summary>The numbers of one rig that last from one batch to another.</summary>
    public int Numbers =>
        (Worlds * (Affines.Components + Rigids.Components))
        + (Channels * ((2 * Vectors.Components) + Rotations.Components))
        + Inputs
        + Weights
        + Morphs
        + (BlendSources * (Rotations.Components + 1));
}
