using System.Runtime.CompilerServices;

namespace Condyle.Runtime.Kernels.One;

/// <summary>Writes rotations that are given in the world.</summary>
internal static class TurnAccess
{
    extension(TurnTargets targets)
    {
        /// <summary>The frame that a node's channels stand in.</summary>
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public WideAffine Stand(int i, Buffers pose) => pose.Worlds.Wide(targets.Bases[i]) * targets.Placements.Constant(i);

        public void Turn(int i, in WideTurn inWorld, in WideAffine stand, Buffers pose) =>
            pose.Turns.Set(targets.Channels[i], inWorld.At(stand.Origin).In(stand).TurnFor(targets.RestScales.Constant(i)));
    }
}
