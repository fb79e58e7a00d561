using Condyle.Evaluation;
using CsCheck;

namespace Condyle.Tests.Evaluation;

/// <summary>Random geometry.</summary>
internal static class Any
{
    public static Gen<Vector3d> Vector { get; } = Gen.Select(Gen.Double[-2, 2], Gen.Double[-2, 2], Gen.Double[-2, 2]).Select((x, y, z) => new Vector3d(x, y, z));

    public static Gen<Vector3d> Direction { get; } = Vector.Where(v => v.Length > 0.1).Select(v => v.Direction!.Value);

    public static Gen<Quaterniond> Rotation { get; } = Gen.Select(Gen.Double[-1, 1], Gen.Double[-1, 1], Gen.Double[-1, 1], Gen.Double[-1, 1])
        .Select((x, y, z, w) => new Quaterniond(x, y, z, w)).Where(q => q.Length > 0.1).Select(q => q.Normalized());

    public static Gen<Vector3d> Scale { get; } = Gen.Select(Gen.Double[0.4, 2.5], Gen.Double[0.4, 2.5], Gen.Double[0.4, 2.5]).Select((x, y, z) => new Vector3d(x, y, z));

    public static Gen<Trs> Channels { get; } = Gen.Select(Vector, Rotation, Scale).Select((t, r, s) => new Trs(t, r, s));

    /// <summary>Two nodes' worth of uneven scale: a frame with shear.</summary>
    public static Gen<Affine3d> Sheared { get; } = Gen.Select(Channels, Channels, Gen.Bool)
        .Select((a, b, mirrored) => (mirrored ? a with { Scale = a.Scale with { Y = -a.Scale.Y } } : a).ToAffine() * b.ToAffine());
}
