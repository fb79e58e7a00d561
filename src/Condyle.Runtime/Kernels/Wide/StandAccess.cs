using System.Runtime.CompilerServices;

namespace Condyle.Runtime.Kernels.One;

/// <summary>Works out the frames that channels stand in.</summary>
internal static class StandAccess
{
    extension(Stands stands)
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public WideAffine Frame(int i, Buffers pose)
        {
            var world = pose.Worlds.Wide(stands.Bases[i]);
            return stands.Placements is null ? world : world * stands.Placements.Constant(i);
        }

        /// <summary>The rotation of a stand without scale.</summary>
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public WideTurn Turn(int i, Buffers pose)
        {
            var turn = pose.WorldTurns.Wide(stands.Bases[i]);
            return stands.Placements is null ? turn : turn * stands.PlacementTurns.Constant(i);
        }
    }
}
