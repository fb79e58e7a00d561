namespace Condyle.Runtime.Kernels;

/// <summary>The nodes that blends write: where their channels stand, and their rest, which they take while all weights are zero.</summary>
internal sealed class BlendTargets
{
    public required int[] Channels { get; init; }

    public required Stands Stands { get; init; }

    /// <summary>For later joints of chains, the world slot of the chain's joint before each target.</summary>
    public required int[]? Before { get; init; }

    public required Vectors RestMoves { get; init; }

    public required Rotations RestTurns { get; init; }

    public required Vectors RestScales { get; init; }

    public int Count => Channels.Length;
}

/// <summary>The sources of blends, one stretch a target.</summary>
internal sealed class BlendSources
{
    /// <summary>For each target, the end of its stretch.</summary>
    public required int[] Ends { get; init; }

    public required int[] Worlds { get; init; }

    /// <summary>For later joints of chains, the world slot of the source joint before each source.</summary>
    public required int[]? Before { get; init; }

    /// <summary>The weight slot of each source.</summary>
    public required int[] Weights { get; init; }
}
