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

    /// <summary>Writes a frame of the world, scale left out, as channels; the rest where nobody has the target.</summary>
    public void Write<TLane>(int i, in WideRigid<TLane> world, TLane isThere, Buffers pose)
        where TLane : struct, ILane<TLane>
    {
        var (channel, scale) = (Channels[i], WideVector<TLane>.All(RestScales[i]));
        var stand = Stands.Frame<TLane>(i, pose);
        WideRigid<TLane> local;
        if (Stands.AreRigid)
        {
            local = new(stand.SeenRigidly(world.Origin), (Stands.Turn<TLane>(i, pose).Inverse * world.Turn).Trued());
        }
        else
        {
            var seen = world.Turn.At(world.Origin).In(stand);
            local = new(seen.Origin, seen.TurnFor(scale));
        }

        pose.Moves.Set(channel, WideVector<TLane>.Choose(isThere, local.Origin, WideVector<TLane>.All(RestMoves[i])));
        pose.Turns.Set(channel, WideTurn<TLane>.Choose(isThere, local.Turn, WideTurn<TLane>.All(RestTurns[i])));
        pose.Scales.Set(channel, scale);
    }
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

    /// <summary>A source's weight; one below zero counts as zero.</summary>
    public TLane Weight<TLane>(int source, Buffers pose)
        where TLane : struct, ILane<TLane> => TLane.Max(TLane.All(0), pose.Weights.Wide<TLane>(Weights[source]));

    /// <summary>A source's frame without scale: in the world, or in the source joint before it.</summary>
    public WideRigid<TLane> Frame<TLane>(int source, Buffers pose)
        where TLane : struct, ILane<TLane>
    {
        var world = WideRigid<TLane>.World(Worlds[source], pose);
        return Before is null ? world : world.In(WideRigid<TLane>.World(Before[source], pose));
    }
}
