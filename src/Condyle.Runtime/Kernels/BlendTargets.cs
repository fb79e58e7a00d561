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

    /// <summary>Writes what was mixed, which is seen from a frame, as channels.</summary>
    public void Write(int i, in Affine stand, in Rigid from, Buffers pose)
    {
        var channel = Channels[i];
        pose.Scales[channel] = RestScales[i];
        if (pose.Mix.TryAverage(out var mean))
        {
            var local = (from * mean).ToAffine().In(stand);
            pose.Moves[channel] = local.Origin;
            pose.Turns[channel] = Rotation.Of(local, RestScales[i]);
        }
        else
        {
            pose.Moves[channel] = RestMoves[i];
            pose.Turns[channel] = RestTurns[i];
        }
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

    public float Weight(int source, Buffers pose) => pose.Weights[Weights[source]];

    public Rigid Frame(int source, Buffers pose) => Rigid.Of(pose.Worlds[Worlds[source]]);
}
