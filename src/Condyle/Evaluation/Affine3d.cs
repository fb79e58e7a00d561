namespace Condyle.Evaluation;

/// <summary>An affine map by the images of the axes and of the origin (the columns of its matrix); <c>a * b</c> applies b first.</summary>
internal readonly record struct Affine3d(Vector3d X, Vector3d Y, Vector3d Z, Vector3d Origin)
{
    /// <summary>Below this volume of its axes' directions, a frame counts as flat.</summary>
    private const double Flat = 1e-12;

    public static Affine3d Identity => new(Vector3d.UnitX, Vector3d.UnitY, Vector3d.UnitZ, Vector3d.Zero);

    public double Determinant => Vector3d.Dot(X, Vector3d.Cross(Y, Z));

    /// <summary>The rotation of <see cref="Frame"/>.</summary>
    public Quaterniond Rotation => RotationFor(Vector3d.One);

    /// <summary>The frame without scale and shear.</summary>
    /// <remarks>
    /// Its axes are made orthonormal in the order X, Y, Z (Gram and Schmidt), and Z is X × Y: a mirrored frame loses its mirroring on Z.
    /// This order, and not the nearest rotation, is what lets a frame go through a sheared parent and come back: for any A and B,
    /// A·frame(A⁻¹·B) has the frame of B.
    /// </remarks>
    public Affine3d Frame => Rigid(Origin, Rotation);

    /// <summary>The mirror image over the plane x = 0, without scale and shear. That of a right-handed frame is left-handed: in it equal channels make the mirrored motion.</summary>
    public Affine3d Mirrored
    {
        get
        {
            var frame = Determinant < 0 ? Frame with { Z = -Frame.Z } : Frame;
            return (Identity with { X = -Vector3d.UnitX }) * frame;
        }
    }

    public static Affine3d operator *(Affine3d a, Affine3d b) => new(a.Turn(b.X), a.Turn(b.Y), a.Turn(b.Z), a.Apply(b.Origin));

    public static Affine3d Rigid(Vector3d origin, Quaterniond rotation) => new Trs(origin, rotation, Vector3d.One).ToAffine();

    public static Affine3d At(Vector3d origin) => Identity with { Origin = origin };

    /// <summary>Where a point goes.</summary>
    public Vector3d Apply(Vector3d point) => Turn(point) + Origin;

    /// <summary>Where a direction goes, scaled and sheared as it is.</summary>
    public Vector3d Turn(Vector3d direction) => (X * direction.X) + (Y * direction.Y) + (Z * direction.Z);

    /// <summary>
    /// The way back. A frame that a scale of zero has made flat has none: it gives the way back of its <see cref="Frame"/>,
    /// so that the result is finite; it isn't continuous there.
    /// </summary>
    public Affine3d Inverse()
    {
        var (x, y, z) = (X.Length, Y.Length, Z.Length);
        if (x <= Vector3d.Tiny || y <= Vector3d.Tiny || z <= Vector3d.Tiny)
            return InverseOfFrame();
        var unit = new Affine3d(X / x, Y / y, Z / z, Vector3d.Zero);
        var volume = unit.Determinant;
        if (Math.Abs(volume) <= Flat)
            return InverseOfFrame();

        // The rows of the inverse are the cross products of the columns over the determinant.
        var (a, b, c) = (Vector3d.Cross(unit.Y, unit.Z) / (volume * x), Vector3d.Cross(unit.Z, unit.X) / (volume * y), Vector3d.Cross(unit.X, unit.Y) / (volume * z));
        var linear = new Affine3d(new(a.X, b.X, c.X), new(a.Y, b.Y, c.Y), new(a.Z, b.Z, c.Z), Vector3d.Zero);
        return linear with { Origin = -linear.Turn(Origin) };
    }

    /// <summary>The rotation that goes with a scale of these signs: that of the frame after the scale's mirroring is taken out.</summary>
    public Quaterniond RotationFor(Vector3d scale)
    {
        var first = X * Sign(scale.X);
        var second = Y * Sign(scale.Y);
        var x = first.Direction ?? Vector3d.Cross(second, Z * Sign(scale.Z)).Direction ?? second.AnyAcross();
        var y = Independent(second, x) ?? Independent(Vector3d.Cross(Z * Sign(scale.Z), x), x) ?? x.AnyAcross();
        return Quaterniond.FromAxes(x, y, Vector3d.Cross(x, y));
    }

    /// <summary>
    /// Translation, rotation and scale; shear is dropped. The scale is the axes' lengths, X's and Y's with the signs of a known scale
    /// and Z's so that a mirrored frame stays mirrored: without shear the frame comes back whole.
    /// </summary>
    public Trs ToTrs(Vector3d signs)
    {
        var (x, y) = (Sign(signs.X), Sign(signs.Y));
        return new(Origin, RotationFor(new(x, y, 1)), new Vector3d(X.Length * x, Y.Length * y, Z.Length * x * y * Sign(Determinant)));
    }

    /// <summary>How far the axes are from right angles: the largest cosine between two of them.</summary>
    public double Shear
    {
        get
        {
            var (x, y, z) = (X.Direction ?? default, Y.Direction ?? default, Z.Direction ?? default);
            return Math.Max(Math.Abs(Vector3d.Dot(x, y)), Math.Max(Math.Abs(Vector3d.Dot(y, z)), Math.Abs(Vector3d.Dot(z, x))));
        }
    }

    private static double Sign(double scale) => scale < 0 ? -1 : 1;

    private static Vector3d? Independent(Vector3d axis, Vector3d first) =>
        axis.Direction is { } direction && direction.Across(first) is var across && across.Length > Flat ? across.Direction : null;

    private Affine3d InverseOfFrame()
    {
        var back = Rotation.Inverse;
        return Rigid(-back.Rotate(Origin), back);
    }

    public override string ToString() => $"{X} {Y} {Z} at {Origin}";
}
