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
