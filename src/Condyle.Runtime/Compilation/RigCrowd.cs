using System.Collections.Concurrent;
using System.Runtime.Intrinsics;
using Condyle.Runtime.Kernels;

namespace Condyle.Runtime;

/// <summary>
/// Many characters that move by one rig, or many frames of one: they lie side by side in the registers of the processor and are evaluated together, several times as fast as one by one.
/// Each comes out as it would alone, bit for bit, whatever the number of its neighbours and of threads.
/// </summary>
public sealed class RigCrowd
{
    /// <summary>What takes more than this isn't in a core's cache any more when its turn comes again.</summary>
    private const long Cached = 1 << 20;

    /// <summary>Each thread takes so many stretches of blocks, so that one that is held up leaves some to the others.</summary>
    private const int StretchesAThread = 8;

    private readonly Buffers[] blocks;
    private readonly RigInstance[] members;

    /// <summary>Where the frames of a crowd lie while it is evaluated, block after block, if a block fits the cache and all of them don't; one for each thread.</summary>
    private readonly ConcurrentBag<Buffers> places = [];

    internal RigCrowd(CompiledRig rig, int count, int width)
    {
        Rig = rig;
        blocks = [.. Enumerable.Range(0, (count + width - 1) / width).Select(_ => rig.Layout.AtRest.Copy(width))];
        members = [.. Enumerable.Range(0, count).Select(member => new RigInstance(rig, blocks[member / width].Lanes[member % width]))];
        GiveBack(Take());
    }

    /// <summary>The rig that they move by.</summary>
    public CompiledRig Rig { get; }

    /// <summary>How many there are.</summary>
    public int Count => members.Length;

    /// <summary>All of them, in order.</summary>
    internal ReadOnlySpan<RigInstance> Members => members;

    /// <summary>How many lie side by side on this machine.</summary>
    internal static int Widest => Vector512.IsHardwareAccelerated ? Kernels.Sixteen.Rigs.Width : Kernels.Eight.Rigs.Width;

    /// <summary>One of them, to be set and read like any instance; only all of them are evaluated together.</summary>
    /// <param name="member">Which one, counted from 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is no such one.</exception>
    public RigInstance this[int member] => (uint)member < (uint)members.Length
        ? members[member]
        : throw new ArgumentOutOfRangeException(nameof(member), member, $"The crowd has {members.Length} members, counted from 0.");

    /// <summary>An exported joint's channels in a block of those that lie side by side.</summary>
    internal JointChannels Channels(int joint, int block) => new(blocks[block], Rig.Controls.Count + joint);

    /// <summary>Works out where everything is for all of them, on this thread. Allocates nothing.</summary>
    public void Evaluate()
    {
        var place = Take();
        Evaluate(0, blocks.Length, place);
        GiveBack(place);
    }

    /// <summary>The same, shared between threads.</summary>
    /// <param name="threads">The largest number of them.</param>
    /// <exception cref="ArgumentOutOfRangeException">The number is below one.</exception>
    public void Evaluate(int threads)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(threads, 1);
        var stretches = Math.Min(blocks.Length, threads * StretchesAThread);
        if (threads == 1)
        {
            Evaluate();
            return;
        }

        Parallel.For(0, stretches, new ParallelOptions { MaxDegreeOfParallelism = threads }, Take, EvaluateStretch, GiveBack);

        Buffers? EvaluateStretch(int stretch, ParallelLoopState state, Buffers? place)
        {
            Evaluate(blocks.Length * stretch / stretches, blocks.Length * (stretch + 1) / stretches, place);
            return place;
        }
    }

    private Buffers? Take() => blocks[0].Bytes > Cached || blocks.Length * blocks[0].Bytes <= Cached ? null : places.TryTake(out var place) ? place : Rig.Layout.AtRest.Copy(blocks[0].Width);

    private void GiveBack(Buffers? place)
    {
        if (place is not null)
            places.Add(place);
    }

    private void Evaluate(int first, int end, Buffers? place)
    {
        var schedule = Rig.Layout.Schedule;
        for (var block = first; block < end; block++)
        {
            if (place is null)
                schedule.Run(blocks[block]);
            else
                schedule.Run(blocks[block], place, blocks[Math.Min(block + 1, end - 1)]);
        }
    }
}
