using Condyle.Evaluation;

namespace Condyle.Runtime.Baking;

/// <summary>Where a joint is: its frame without scale and shear.</summary>
/// <param name="Origin">Metres of the world.</param>
/// <param name="Rotation">A unit quaternion of either sign.</param>
internal readonly record struct Place(Vector3d Origin, Quaterniond Rotation)
{
    public static Place operator *(in Place outer, in Place inner) => new(outer.Origin + outer.Rotation.Rotate(inner.Origin), outer.Rotation * inner.Rotation);

    public Place SeenFrom(in Place outer) => new(outer.Rotation.Inverse.Rotate(Origin - outer.Origin), outer.Rotation.Inverse * Rotation);

    public static Place Of(in Affine3d world) => new(world.Origin, world.Rotation);

    public Affine3d ToAffine() => Affine3d.Rigid(Origin, Rotation);
}
