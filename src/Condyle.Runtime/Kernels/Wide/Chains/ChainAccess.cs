using Lane = System.Runtime.Intrinsics.Vector128<float>;
using Lanes = System.Runtime.Intrinsics.Vector128;

namespace Condyle.Runtime.Kernels.One;

/// <summary>Copies of chains, unsolved, and solved ones as channels.</summary>
internal static class ChainAccess
{
    extension(CopyChains chains)
    {
        /// <summary>The frame of an unsolved root.</summary>
        public WideAffine Root(int copy, Buffers pose) => pose.Worlds.Wide(chains.Bases[copy]) * chains.Roots.Constant(copy);

        /// <summary>Puts the unsolved bones and the rotations of their joints into the room.</summary>
        /// <returns>The bones' length together, and how far the tip is from the root.</returns>
        public (Lane Length, Lane Reach) Unsolved(int copy, in WideAffine root, ChainRoom room)
        {
            var (frame, first) = (root, chains.FirstOf(copy));
            var (length, tip) = (Lane.Zero, WideVector.Zero);
            for (var i = 0; i < chains.BonesOf(copy); i++)
            {
                var placement = chains.Placements.Constant(first + i + 1);
                var bone = frame.Direction(placement.Origin);
                room.Turns.Set(i, frame.Turn);
                room.Lengths.Set(i, bone.Length);
                room.Rest.Set(i, bone.Direction(out _));
                length += bone.Length;
                tip += bone;
                frame *= placement;
            }

            return (length, tip.Length);
        }

        /// <summary>Writes the rotations and factors in the room as channels, with the root moved in the world.</summary>
        public void Write(int copy, in WideAffine root, in WideVector moved, Buffers pose)
        {
            var (room, stand, first) = (pose.Room, root, chains.FirstOf(copy));
            for (var i = 0; i <= chains.BonesOf(copy); i++)
            {
                if (i > 0)
                    stand *= chains.Placements.Constant(first + i);
                var local = room.Turns.Wide(i).At(moved).In(new(stand.X, stand.Y, stand.Z, WideVector.Zero));
                var (move, turn) = (i == 0 ? local.Origin : chains.Doublings.Constant(first + i) * (room.Factors.Wide(i - 1) - Lanes.Create(1f)), local.Turn);
                pose.Moves.Set(chains.Channels[first + i], move);
                pose.Turns.Set(chains.Channels[first + i], turn);
                stand *= turn.At(move);
            }
        }
    }
}
