using Condyle.Model;

namespace Condyle.Evaluation;

/// <summary>A node's channels in double precision: scale first, then rotation, then translation.</summary>
internal readonly record struct Trs(Vector3d Translation, Quaterniond Rotation, Vector3d Scale)
{
    public static Trs Identity => new(Vector3d.Zero, Quaterniond.Identity, Vector3d.One);

    /// <summary>The channels of a delivered joint; its single-precision rotation is made a unit in double precision.</summary>
    public static Trs Of(RestTransform rest) => new(rest.Translation, ((Quaterniond)rest.Rotation).Normalized(), rest.Scale);

    public Affine3d ToAffine()
    {
        var (x, y, z) = Rotation.Axes;
        return new(x * Scale.X, y * Scale.Y, z * Scale.Z, Translation);
    }

    /// <summary>These channels, with some of them taken from others; the rotation is taken whole.</summary>
    public Trs Taking(Channels taken, Trs from) => new(
        Taking(taken, Channels.MoveX, Channels.MoveY, Channels.MoveZ, Translation, from.Translation),
        (taken & Channels.Turn) != Channels.None ? from.Rotation : Rotation,
        Taking(taken, Channels.ScaleX, Channels.ScaleY, Channels.ScaleZ, Scale, from.Scale));

    private static Vector3d Taking(Channels taken, Channels x, Channels y, Channels z, Vector3d own, Vector3d from) => new(
        (taken & x) != Channels.None ? from.X : own.X,
        (taken & y) != Channels.None ? from.Y : own.Y,
        (taken & z) != Channels.None ? from.Z : own.Z);

    public override string ToString() => $"{Translation} {Rotation} {Scale}";
}
