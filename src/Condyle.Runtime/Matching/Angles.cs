using Condyle.Evaluation;

namespace Condyle.Runtime.Matching;

/// <summary>A turn as angles in degrees about X, then about Y as it lies then, then about Z: the product X · Y · Z of <see cref="TurnOrder.XYZ"/>.</summary>
/// <remarks>With Y at a quarter turn, X and Z turn about the same line: X has it all. Not continuous there, nor at half turns about X and Z.</remarks>
internal readonly record struct Angles(double X, double Y, double Z)
{
    private const double DegreesPerRadian = 180 / Math.PI;

    /// <summary>So near to a quarter turn about Y, in degrees, a float's rounding turns X against Z.</summary>
    private const double SameLine = 0.1;

    public double this[Axis axis] => axis switch { Axis.X => X, Axis.Y => Y, _ => Z };

    public Quaterniond Turn => About(Axis.X) * About(Axis.Y) * About(Axis.Z);

    public static Angles Of(Quaterniond turn)
    {
        var (x, y, z) = (turn.Rotate(Vector3d.UnitX), turn.Rotate(Vector3d.UnitY), turn.Rotate(Vector3d.UnitZ));
        var across = Math.Sqrt((x.X * x.X) + (y.X * y.X));
        var (aboutX, aboutZ) = across > 1e-9 ? (Math.Atan2(-z.Y, z.Z), Math.Atan2(-y.X, x.X)) : (Math.Atan2(y.Z, y.Y), 0);
        return new(aboutX * DegreesPerRadian, Math.Atan2(z.X, across) * DegreesPerRadian, aboutZ * DegreesPerRadian);
    }

    /// <summary>The same turn the other way: about Y past a quarter, with X and Z half a turn on.</summary>
    public Angles Other => new(HalfOn(X), HalfOn(-Y), HalfOn(Z));

    /// <summary>Of both ways the one with fewer degrees in all.</summary>
    public Angles Shorter => Other.Sum < Sum ? Other : this;

    /// <summary>All ways to read the turn, the one with fewer degrees first; at a quarter turn about Y also those that leave X or Z alone.</summary>
    public IEnumerable<Angles> Readings
    {
        get
        {
            yield return Shorter;
            yield return Shorter.Other;
            if (90 - Math.Abs(Y) > SameLine)
                yield break;
            var side = Math.Sign(Y);
            yield return this with { X = X + (side * Z), Z = 0 };
            yield return this with { X = 0, Z = Z + (side * X) };
        }
    }

    private double Sum => Math.Abs(X) + Math.Abs(Y) + Math.Abs(Z);

    private static double HalfOn(double degrees) => degrees > 0 ? degrees - 180 : degrees + 180;

    private Quaterniond About(Axis axis) => Quaterniond.About(Vector3d.Unit(axis), this[axis] / DegreesPerRadian);
}
