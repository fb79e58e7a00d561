using System.Numerics;

namespace Condyle.Runtime.Kernels;

/// <summary>Nodes whose rotation is written alone, and what their channels stand in.</summary>
internal sealed class TurnTargets
{
    public required int[] Channels { get; init; }

    public required int[] Bases { get; init; }

    public required Affines Placements { get; init; }

    /// <summary>Its signs say which way a frame with scale is turned.</summary>
    public required Vectors RestScales { get; init; }

    public int Count => Channels.Length;

    /// <summary>The frame that a node's channels stand in.</summary>
    public Affine Stand(int i, Buffers pose) => pose.Worlds[Bases[i]] * Placements[i];

    /// <summary>Writes a rotation that is given in the world.</summary>
    public void Turn(int i, Quaternion inWorld, in Affine stand, Buffers pose)
    {
        var local = Affine.Of(Vector3.Zero, inWorld, Vector3.One).In(new(stand.X, stand.Y, stand.Z, Vector3.Zero));
        pose.Turns[Channels[i]] = Rotation.Of(local, RestScales[i]);
    }
}
