using System.Numerics;

namespace Condyle.Model;

/// <summary>Translation in metres, rotation as a unit quaternion, and scale: the rest of a joint in its parent's space.</summary>
internal readonly record struct RestTransform(Vector3 Translation, Quaternion Rotation, Vector3 Scale)
{
    public static RestTransform Identity { get; } = new(Vector3.Zero, Quaternion.Identity, Vector3.One);

    public override string ToString() =>
        $"{Invariant.Print(Translation)} {Invariant.Print(Rotation)} {Invariant.Print(Scale)}";
}
