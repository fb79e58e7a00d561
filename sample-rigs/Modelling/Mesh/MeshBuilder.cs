using Modelling.Anatomy;
using Modelling.Geometry;

namespace Modelling.Mesh;

public sealed record Vertex(Vec Position, Vec Normal, Influences Influences);

/// <summary>All triangles of one material, counter-clockwise seen from outside.</summary>
public sealed record Surface(Material Material, List<Vertex> Vertices, List<int> Indices);

/// <summary>Collects closed tubes.</summary>
/// <param name="joints">The joints that they follow.</param>
/// <param name="isFaceted">Whether each triangle is flat by itself, as sawn and welded things are.</param>
public sealed class MeshBuilder(JointTree joints, bool isFaceted = false)
{
    private readonly List<Surface> _surfaces = [];

    public IReadOnlyList<Surface> Surfaces => _surfaces;

    public void Tube(Material material, int sides, IReadOnlyList<Ring> rings, Func<Ring, Vec, Influences> weights)
    {
        var points = new List<(Vec Position, Influences Influences)>();
        foreach (var ring in rings)
        {
            for (var side = 0; side < sides; side++)
            {
                var position = ring.Point(side, sides);
                points.Add((position, weights(ring, position)));
            }
        }

        var (first, last) = (points.Count, points.Count + 1);
        points.Add((rings[0].Centre, weights(rings[0], rings[0].Centre)));
        points.Add((rings[^1].Centre, weights(rings[^1], rings[^1].Centre)));

        var triangles = new List<(int A, int B, int C)>();
        for (var side = 0; side < sides; side++)
        {
            var next = (side + 1) % sides;
            triangles.Add((first, next, side));
            for (var ring = 0; ring < rings.Count - 1; ring++)
            {
                var (low, high) = (ring * sides, (ring + 1) * sides);
                triangles.Add((low + side, low + next, high + side));
                triangles.Add((low + next, high + next, high + side));
            }

            var top = (rings.Count - 1) * sides;
            triangles.Add((last, top + side, top + next));
        }

        var inwards = rings[0].Across.Cross(rings[0].Front).Dot(rings[^1].Centre - rings[0].Centre) < 0;
        Add(material, points, inwards ? triangles.ConvertAll(t => (t.A, t.C, t.B)) : triangles);
    }

    /// <summary>A tube of the left side, and its mirror image with the right side's joints.</summary>
    public void Tubes(Material material, int sides, IReadOnlyList<Ring> rings, Func<Ring, Vec, Influences> weights)
    {
        Tube(material, sides, rings, weights);
        Tube(material, sides, [.. rings.Select(ring => ring.Mirrored)],
            (ring, position) => weights(ring.Mirrored, position.Mirrored).Mirrored(joints));
    }

    private void Add(Material material, List<(Vec Position, Influences Influences)> points, List<(int A, int B, int C)> triangles)
    {
        var surface = _surfaces.Find(candidate => candidate.Material == material);
        if (surface is null)
            _surfaces.Add(surface = new Surface(material, [], []));

        if (isFaceted)
        {
            points = [.. triangles.SelectMany(t => new[] { points[t.A], points[t.B], points[t.C] })];
            triangles = [.. Enumerable.Range(0, triangles.Count).Select(i => (3 * i, (3 * i) + 1, (3 * i) + 2))];
        }

        var normals = new Vec[points.Count];
        foreach (var (a, b, c) in triangles)
        {
            // The cross product's length is twice the area, so large faces count for more.
            var normal = (points[b].Position - points[a].Position).Cross(points[c].Position - points[a].Position);
            normals[a] += normal;
            normals[b] += normal;
            normals[c] += normal;
        }

        var start = surface.Vertices.Count;
        surface.Vertices.AddRange(points.Select((point, i) => new Vertex(point.Position, normals[i].Unit, point.Influences)));
        foreach (var (a, b, c) in triangles)
            surface.Indices.AddRange([start + a, start + b, start + c]);
    }
}
