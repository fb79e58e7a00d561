using System.Numerics;

namespace Condyle.Runtime.Kernels;

/// <summary>The nodes that blends write: where their channels stand, and their rest, which they take while all weights are zero.</summary>
internal sealed class BlendTargets
{
    public required int[] Channels { get; init; }

    public required int[] Bases { get; init; }

    public required Affines Placements { get; init; }

    public required Vectors RestMoves { get; init; }

    public required Rotations RestTurns { get; init; }

    public required Vectors RestScales { get; init; }

    public int Count => Channels.Length;

    /// <summary>The frame that a target's channels stand in.</summary>
    public Affine Stand(int i, Buffers pose) => pose.Worlds[Bases[i]] * Placements[i];

    public void WriteRest(int i, Buffers pose) => Write(i, RestMoves[i], RestTurns[i], pose);

    public void Write(int i, Vector3 move, Quaternion turn, Buffers pose)
    {
        pose.Moves[Channels[i]] = move;
        pose.Turns[Channels[i]] = turn;
        pose.Scales[Channels[i]] = RestScales[i];
    }
}

/// <summary>The sources of blends, one stretch a target.</summary>
internal sealed class BlendSources
{
    /// <summary>For each target, the end of its stretch.</summary>
    public required int[] Ends { get; init; }

    public required int[] Worlds { get; init; }

    /// <summary>The weight slot of each source.</summary>
    public required int[] Weights { get; init; }
}
