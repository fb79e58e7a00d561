namespace Modelling.Geometry;

/// <summary>A vector in double precision: rounded on output, it gives the same bytes on every processor.</summary>
public readonly record struct Vec(double X, double Y, double Z)
{
    public static Vec Left => new(1, 0, 0);
    public static Vec Up => new(0, 1, 0);
    public static Vec Front => new(0, 0, 1);

    public double Length => Math.Sqrt(Dot(this));
    public Vec Unit => this * (1 / Length);

    /// <summary>Reflected in the body's middle plane, X = 0.</summary>
    public Vec Mirrored => new(-X, Y, Z);

    public static Vec operator +(Vec a, Vec b) => new(a.X + b.X, a.Y + b.Y, a.Z + b.Z);
    public static Vec operator -(Vec a, Vec b) => new(a.X - b.X, a.Y - b.Y, a.Z - b.Z);
    public static Vec operator -(Vec a) => new(-a.X, -a.Y, -a.Z);
    public static Vec operator *(Vec a, double factor) => new(a.X * factor, a.Y * factor, a.Z * factor);

    public double Dot(Vec other) => X * other.X + Y * other.Y + Z * other.Z;

    public Vec Cross(Vec other) => new(Y * other.Z - Z * other.Y, Z * other.X - X * other.Z, X * other.Y - Y * other.X);
}
