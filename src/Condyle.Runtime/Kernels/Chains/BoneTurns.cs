using System.Numerics;

namespace Condyle.Runtime.Kernels;

/// <summary>
/// The turns of a chain's joints from rest, one after another from the root: each is the smallest that brings the joint's bone from where the joint above carries it
/// to its direction. The root's comes on top of the turn of the bend's plane. Where cones are given, a bone beyond its cone is taken to the nearest direction in it.
/// </summary>
/// <remarks>Not continuous where a bone is opposite to where the joint above carries it.</remarks>
internal ref struct BoneTurns(ReadOnlySpan<Vector3> rest, Quaternion plane, Vector3 normal, ReadOnlySpan<float> cones)
{
    private readonly ReadOnlySpan<Vector3> rest = rest;
    private readonly ReadOnlySpan<float> cones = cones;
    private Quaternion above = Quaternion.Identity;

    public readonly bool HasCones => cones.Length > 0;

    /// <summary>Begins at the root.</summary>
    public void Begin() => above = Quaternion.Identity;

    /// <summary>The turn of the next joint from the root on, whose bone goes to a direction.</summary>
    public Quaternion Next(int bone, Vector3 direction)
    {
        var carrying = bone == 0 ? plane : above;
        if (rest[bone] == Vector3.Zero)
            return above = carrying;
        var carried = Vector3.Transform(rest[bone], carrying);
        return above = Rotation.Between(carried, direction, Beside(Rotation.Across(normal, carried), carried)) * carrying;
    }

    /// <summary>A bone's direction in its cone; the joints above have their turns.</summary>
    public readonly Vector3 Limited(int bone, Vector3 direction)
    {
        if (!HasCones)
            return direction;
        var axis = Vector3.Transform(rest[bone], above);
        var (along, across) = (Vector3.Dot(direction, axis), Rotation.Across(direction, axis));
        if (MathF.Atan2(across.Length(), along) <= cones[bone])
            return direction;
        var beside = across.Length() > Rotation.Flat ? Vector3.Normalize(across) : Beside(Vector3.Cross(normal, axis), axis);
        var (sine, cosine) = MathF.SinCos(cones[bone]);
        return (axis * cosine) + (beside * sine);
    }

    private static Vector3 Beside(Vector3 across, Vector3 axis) => Rotation.TryDirection(across, out var found) ? found : Rotation.AnyAcross(axis);
}
