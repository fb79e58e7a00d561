using Lane = System.Runtime.Intrinsics.Vector128<float>;
using Lanes = System.Runtime.Intrinsics.Vector128;

namespace Condyle.Runtime.Kernels.One;

/// <summary>
/// The turns of a chain's joints from rest, one after another from the root: each is the smallest that brings the joint's bone from where the joint above carries it
/// to its direction. The root's comes on top of the turn of the bend's plane. Where cones are given, a bone beyond its cone is taken to the nearest direction in it.
/// </summary>
/// <remarks>Not continuous where a bone is opposite to where the joint above carries it.</remarks>
internal ref struct BoneTurns(Vectors rest, WideTurn plane, WideVector normal, ReadOnlySpan<BoneCone> cones)
{
    private readonly ReadOnlySpan<BoneCone> cones = cones;
    private WideTurn above = WideTurn.Identity;

    public readonly bool HasCones => cones.Length > 0;

    /// <summary>Begins at the root.</summary>
    public void Begin() => above = WideTurn.Identity;

    /// <summary>The turn of the next joint from the root on, whose bone goes to a direction. Where it has no bone, it stays where it is carried.</summary>
    public WideTurn Next(int bone, in WideVector direction)
    {
        var carrying = bone == 0 ? plane : above;
        var unsolved = rest.Wide(bone);
        var isBone = Lanes.LessThan(Lanes.Create(0f), unsolved.LengthSquared);
        var carried = carrying.Rotate(unsolved);
        var turned = (WideTurn.Between(carried, direction, Beside(normal.Across(carried), carried)) * carrying).Trued();
        above = WideTurn.Choose(isBone, turned, carrying);
        return above;
    }

    /// <summary>A bone's direction in its cone; the joints above have their turns.</summary>
    public readonly WideVector Limited(int bone, in WideVector direction)
    {
        if (!HasCones)
            return direction;
        var axis = above.Rotate(rest.Wide(bone));
        var (along, across) = (WideVector.Dot(direction, axis), direction.Across(axis));
        var (aside, cone) = (across.Length, cones[bone]);
        var (cosine, sine) = (Lanes.Create(cone.Cosine), Lanes.Create(cone.Sine));

        // The sine of the angle to the cone; in a cone of less than a quarter turn there is nothing behind it either.
        var isWithin = Lanes.LessThanOrEqual(aside * cosine, along * sine);
        if (cone.Cosine > 0)
            isWithin &= Lanes.LessThanOrEqual(Lane.Zero, along);
        if (Rigs.Every(isWithin))
            return direction;
        var beside = WideVector.Choose(Lanes.LessThan(Lanes.Create(Rotation.Flat), aside), across * (Lanes.Create(1f) / aside), Beside(WideVector.Cross(normal, axis), axis));
        return WideVector.Choose(isWithin, direction, WideVector.MultiplyAdd(axis, cosine, beside * sine));
    }

    private static WideVector Beside(in WideVector across, in WideVector axis)
    {
        var direction = across.Direction(out var isThere);
        return Rigs.Every(isThere) ? direction : WideVector.Choose(isThere, direction, axis.AnyAcross());
    }
}
