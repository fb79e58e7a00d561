using Modelling.Geometry;

namespace Modelling.Mesh;

/// <summary>
/// One cross section: two half axes about a centre. <paramref name="At"/> is its place along the bones.
/// A <paramref name="Squareness"/> of 2 is an ellipse, more is boxier.
/// </summary>
public sealed record Ring(Vec Centre, Vec Across, Vec Front, double At, double Squareness = 2)
{
    /// <summary>A level section of the upright body.</summary>
    public static Ring Level(double height, double halfWidth, double halfDepth, double depth, double squareness = 2) =>
        new(new Vec(0, height, depth), Vec.Left * halfWidth, Vec.Front * halfDepth, height, squareness);

    public Ring Mirrored => this with { Centre = Centre.Mirrored, Across = Across.Mirrored, Front = Front.Mirrored };

    public Vec Point(int side, int sides)
    {
        var angle = (side + 0.5) * 2 * Math.PI / sides;
        return Centre + Across * Swell(Math.Cos(angle)) + Front * Swell(Math.Sin(angle));
    }

    private double Swell(double value) => Math.Sign(value) * Math.Pow(Math.Abs(value), 2 / Squareness);
}
