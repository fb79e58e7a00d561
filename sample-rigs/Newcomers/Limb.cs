using System.Numerics;

namespace Newcomers;

/// <summary>Three joints that move skin, one below the other, which end a part of the body: an arm or a leg.</summary>
/// <param name="Root">The upper joint, by its index in the skeleton.</param>
/// <param name="Middle">The joint that bends.</param>
/// <param name="Tip">The joint that reaches.</param>
/// <param name="Length">Metres from root to middle to tip.</param>
/// <param name="Line">From root to tip, in the world at rest.</param>
internal sealed record Limb(int Root, int Middle, int Tip, float Length, Vector3 Line)
{
    public IReadOnlyList<int> Bones => [Root, Middle, Tip];

    /// <summary>
    /// Where a straight limb bends to. A character faces +Z, its knees bend forwards and its elbows backwards; the two are told apart by how steeply they hang.
    /// </summary>
    public Vector3 BendWhenStraight
    {
        get
        {
            var steep = Vector3.Abs(Line);
            if (steep.Z > steep.X && steep.Z > steep.Y)
                return Vector3.UnitY;
            return steep.Y > steep.X ? Vector3.UnitZ : -Vector3.UnitZ;
        }
    }
}
