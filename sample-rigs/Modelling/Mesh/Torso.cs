using Modelling.Anatomy;
using Modelling.Geometry;

namespace Modelling.Mesh;

/// <summary>The seat of the trousers and the jacket. Heights and girths in metres, by eye.</summary>
internal static class Torso
{
    public static void Add(MeshBuilder mesh, JointTree joints)
    {
        mesh.Tube(Material.Trousers, 16,
        [
            Ring.Level(0.865, 0.060, 0.060, -0.010),
            Ring.Level(0.890, 0.135, 0.095, -0.010, 2.3),
            Ring.Level(0.940, 0.175, 0.120, -0.012, 2.4),
            Ring.Level(1.000, 0.176, 0.122, -0.010, 2.4),
            Ring.Level(1.060, 0.160, 0.108, -0.008, 2.4),
        ], (ring, point) => Seat(joints, point));

        mesh.Tube(Material.Jacket, 16,
        [
            Ring.Level(0.985, 0.182, 0.128, -0.010, 2.4),
            Ring.Level(1.010, 0.190, 0.134, -0.010, 2.4),
            Ring.Level(1.060, 0.180, 0.130, -0.008, 2.4),
            Ring.Level(1.130, 0.172, 0.122, -0.006, 2.4),
            Ring.Level(1.200, 0.176, 0.124, -0.006, 2.4),
            Ring.Level(1.280, 0.190, 0.132, -0.008, 2.4),
            Ring.Level(1.350, 0.200, 0.136, -0.012, 2.4),
            Ring.Level(1.410, 0.196, 0.126, -0.018, 2.4),
            Ring.Level(1.455, 0.184, 0.106, -0.024, 2.2),
            Ring.Level(1.487, 0.172, 0.084, -0.028),
            Ring.Level(1.513, 0.118, 0.078, -0.026),
            Ring.Level(1.545, 0.073, 0.076, -0.018),
            Ring.Level(1.548, 0.055, 0.060, -0.016),
        ], (ring, point) => Jacket(joints, point));
    }

    public static Influences Spine(JointTree joints, double height)
    {
        var influences = Influences.Of(joints["pelvis"]);
        foreach (var (name, softness) in new[] { ("waist", 0.06), ("chest", 0.07), ("neck", 0.03), ("head", 0.025) })
        {
            var start = joints[name].World.Origin.Y;
            influences = influences.With(joints[name], Influences.Smooth(height, start - softness, start + softness));
        }

        return influences;
    }

    private static Influences Seat(JointTree joints, Vec point)
    {
        var share = 0.6 * (1 - Influences.Smooth(point.Y, 0.88, 1.0)) * Influences.Smooth(Math.Abs(point.X), 0.0, 0.12);
        return Spine(joints, point.Y).With(joints[Sided("hip", point)], share);
    }

    private static Influences Jacket(JointTree joints, Vec point)
    {
        var share = 0.75 * Influences.Smooth(point.Y, 1.34, 1.45) * Influences.Smooth(Math.Abs(point.X), 0.04, 0.18);
        return Spine(joints, point.Y).With(joints[Sided("collar", point)], share);
    }

    private static string Sided(string name, Vec point) => name + (point.X < 0 ? "_right" : "_left");
}
