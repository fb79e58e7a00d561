using System.Numerics;

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

    /// <summary>The frame of an unsolved root.</summary>
    public Affine Root(int copy, Buffers pose) => pose.Worlds[Bases[copy]] * Roots[copy];

    /// <summary>Puts the unsolved bones and the rotations of their joints into the room.</summary>
    /// <returns>The bones' length together, and how far the tip is from the root.</returns>
    public (float Length, float Reach) Unsolved(int copy, in Affine root, ChainRoom room)
    {
        var (frame, first, length, tip) = (root, FirstOf(copy), 0f, Vector3.Zero);
        for (var i = 0; i + 1 < Ends[copy] - first; i++)
        {
            var bone = frame.Direction(Placements[first + i + 1].Origin);
            room.Turns[i] = Rotation.Of(frame, Vector3.One);
            frame *= Placements[first + i + 1];
            room.Lengths[i] = bone.Length();
            Rotation.TryDirection(bone, out room.Rest[i]);
            length += room.Lengths[i];
            tip += bone;
        }

        return (length, tip.Length());
    }

    /// <summary>Writes the rotations and factors in the room as channels, with the root moved in the world.</summary>
    public void Write(int copy, in Affine root, Vector3 moved, Buffers pose, ChainRoom room)
    {
        var (stand, first) = (root, FirstOf(copy));
        for (var i = 0; i < Ends[copy] - first; i++)
        {
            if (i > 0)
                stand *= Placements[first + i];
            var local = Affine.Of(moved, room.Turns[i], Vector3.One).In(new(stand.X, stand.Y, stand.Z, Vector3.Zero));
            var (move, turn) = (i == 0 ? local.Origin : Doublings[first + i] * (room.Factors[i - 1] - 1), Rotation.Of(local, Vector3.One));
            pose.Moves[Channels[first + i]] = move;
            pose.Turns[Channels[first + i]] = turn;
            stand *= Affine.Of(move, turn, Vector3.One);
        }
    }
}
