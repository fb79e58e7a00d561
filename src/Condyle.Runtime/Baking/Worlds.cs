using System.Numerics;
using Condyle.Evaluation;

namespace Condyle.Runtime.Baking;

/// <summary>The runtime's single-precision places as the double precision that they are compared in.</summary>
internal static class Worlds
{
    public static Affine3d World(this RigInstance live, int joint) => live.JointWorld(joint).ToAffine();

    /// <summary>The same without scale and shear; where there can be none, nothing is taken out of axes.</summary>
    public static Place Place(this RigInstance live, int joint) => live.JointFrame(joint) is var (origin, turn)
        ? new(origin, ((Quaterniond)turn).Normalized())
        : Baking.Place.Of(live.World(joint));

    public static Affine3d ToAffine(this Matrix4x4 world) => new(
        new Vector3d(world.M11, world.M12, world.M13),
        new Vector3d(world.M21, world.M22, world.M23),
        new Vector3d(world.M31, world.M32, world.M33),
        world.Translation);
}
