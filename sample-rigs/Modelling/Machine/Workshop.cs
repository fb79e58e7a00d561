using Modelling.Anatomy;
using Modelling.Geometry;
using Modelling.Mesh;

namespace Modelling.Machine;

/// <summary>What machines are welded together from: boxes, bars and drums, each a part of one joint.</summary>
internal sealed class Workshop(MeshBuilder mesh, ModelJoint part)
{
    private static readonly double Corner = Math.Sqrt(2); // a ring of four sides has its corners at 45 degrees

    /// <summary>A box in the part's own frame.</summary>
    public void Box(Material material, Vec centre, double width, double height, double depth)
    {
        Ring At(double y) => new(
            part.World.Out(centre + Vec.Up * y), part.World.X * (width / 2 * Corner), part.World.Z * (depth / 2 * Corner), y);
        mesh.Tube(material, 4, [At(-height / 2), At(height / 2)], Rigid);
    }

    /// <summary>A straight bar of square section between two points of the part's frame.</summary>
    public void Bar(Material material, Vec from, Vec to, double thickness) => Drum(material, from, to, thickness / 2 * Corner, 4);

    /// <summary>A cylinder between two points of the part's frame.</summary>
    public void Drum(Material material, Vec from, Vec to, double radius, int sides = 12) => Cone(material, from, to, radius, radius, sides);

    public void Cone(Material material, Vec from, Vec to, double fromRadius, double toRadius, int sides)
    {
        var along = Frame.Along(part.World.Out(from), part.World.Direction(to - from), Across(part.World.Direction(to - from)));
        Ring At(Vec local, double radius, double at) => new(part.World.Out(local), along.X * radius, along.Z * radius, at);
        mesh.Tube(material, sides, [At(from, fromRadius, 0), At(to, toRadius, 1)], Rigid);
    }

    /// <summary>A bent rod through points of the part's frame, all in the plane that faces along its Z axis.</summary>
    public void Rod(Material material, double thickness, params IReadOnlyList<Vec> points)
    {
        var rings = new List<Ring>();
        for (var i = 0; i < points.Count; i++)
        {
            var along = points[Math.Min(i + 1, points.Count - 1)] - points[Math.Max(i - 1, 0)];
            var across = Vec.Front.Cross(along).Unit;
            var radius = thickness / 2 * (i == points.Count - 1 ? 0.5 : 1);
            rings.Add(new Ring(part.World.Out(points[i]), part.World.Direction(across) * radius, part.World.Z * radius, i));
        }

        mesh.Tube(material, 6, rings, Rigid);
    }

    private static Vec Across(Vec along) => Math.Abs(along.Unit.X) > 0.9 ? Vec.Up : Vec.Left;

    private Influences Rigid(Ring ring, Vec point) => Influences.Of(part);
}
