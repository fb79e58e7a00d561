namespace Condyle.Evaluation;

/// <summary>
/// The turns of a chain's joints from rest, one after another from the root: each is the smallest that brings the joint's bone from where the joint above carries it
/// to its direction, so that no joint twists on its parent. The root's comes on top of the turn of the bend's plane.
/// </summary>
/// <remarks>Not continuous where a bone is opposite to where the joint above carries it: half a turn about the bend's normal is taken.</remarks>
/// <param name="rest">The bones' directions, unsolved; where a bone has no length its joint goes with the one above.</param>
/// <param name="plane">The turn of the bend's plane.</param>
internal sealed class BoneTurns(IReadOnlyList<Vector3d> rest, Quaterniond plane)
{
    /// <summary>Two directions whose sum or difference is shorter than this are opposite or the same.</summary>
    public const double Opposite = 1e-12;

    public IReadOnlyList<Vector3d> Rest => rest;

    public Quaterniond Plane => plane;

    /// <summary>The turn of a joint from rest in the world.</summary>
    /// <param name="bone">The joint's bone.</param>
    /// <param name="above">The turn of the joint above; nothing at the root.</param>
    /// <param name="direction">Where the bone goes.</param>
    /// <param name="normal">The normal of the bend's plane.</param>
    public Quaterniond Next(int bone, Quaterniond above, Vector3d direction, Vector3d normal)
    {
        var carrying = bone == 0 ? plane : above;
        if (rest[bone] == Vector3d.Zero)
            return carrying;
        var carried = carrying.Rotate(rest[bone]);
        return Quaterniond.Between(carried, direction, normal.Across(carried).Direction ?? carried.AnyAcross()) * carrying;
    }
}
