namespace Condyle.Runtime.Kernels;

/// <summary>The copies of a batch's solvers, a stretch of joints each: how they stand with their channels at zero, under their bases as those are now.</summary>
internal sealed class CopyChains
{
    public required int[] Bases { get; init; }

    /// <summary>The frame of each unsolved root in its base.</summary>
    public required Affines Roots { get; init; }

    /// <summary>For each copy, the end of its stretch of joints.</summary>
    public required int[] Ends { get; init; }

    /// <summary>The frame of each unsolved joint in the one above; not used for a root.</summary>
    public required Affines Placements { get; init; }

    /// <summary>The move of each joint, behind its placement, that makes the bone above it twice as long.</summary>
    public required Vectors Doublings { get; init; }

    public required int[] Channels { get; init; }

    public int Count => Bases.Length;

    public int FirstOf(int copy) => copy == 0 ? 0 : Ends[copy - 1];

    /// <summary>How many bones a copy has: one less than joints.</summary>
    public int BonesOf(int copy) => Ends[copy] - FirstOf(copy) - 1;
}
