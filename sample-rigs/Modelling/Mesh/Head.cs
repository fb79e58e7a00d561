using Modelling.Anatomy;
using Modelling.Geometry;

namespace Modelling.Mesh;

/// <summary>Neck, head, face, eyes and a woollen cap. Heights and girths in metres, by eye.</summary>
internal static class Head
{
    public static void Add(MeshBuilder mesh, JointTree joints)
    {
        Influences Spine(Ring ring, Vec point) => Torso.Spine(joints, ring.At);
        Influences Rigid(Ring ring, Vec point) => Influences.Of(joints["head"]);

        mesh.Tube(Material.Skin, 12,
        [
            Ring.Level(1.480, 0.060, 0.062, -0.030),
            Ring.Level(1.530, 0.058, 0.062, -0.022),
            Ring.Level(1.555, 0.058, 0.066, -0.012),
            Ring.Level(1.566, 0.060, 0.086, 0.012, 2.3),
            Ring.Level(1.590, 0.066, 0.100, 0.012, 2.3),
            Ring.Level(1.640, 0.074, 0.104, 0.004, 2.2),
            Ring.Level(1.700, 0.078, 0.104, -0.002, 2.2),
            Ring.Level(1.745, 0.070, 0.092, -0.006),
            Ring.Level(1.775, 0.046, 0.060, -0.008),
            Ring.Level(1.785, 0.016, 0.020, -0.008),
        ], Spine);

        mesh.Tube(Material.Wool, 12,
        [
            Ring.Level(1.690, 0.083, 0.109, -0.004, 2.2),
            Ring.Level(1.696, 0.089, 0.115, -0.004, 2.2),
            Ring.Level(1.728, 0.088, 0.114, -0.005, 2.2),
            Ring.Level(1.732, 0.082, 0.107, -0.005, 2.2),
            Ring.Level(1.765, 0.070, 0.091, -0.008),
            Ring.Level(1.788, 0.046, 0.060, -0.011),
            Ring.Level(1.800, 0.016, 0.021, -0.012),
        ], Rigid);

        mesh.Tube(Material.Skin, 6,
        [
            Ring.Level(1.622, 0.016, 0.018, 0.100),
            Ring.Level(1.632, 0.017, 0.026, 0.104),
            Ring.Level(1.680, 0.009, 0.012, 0.100),
        ], Rigid);

        Influences Eye(Ring ring, Vec point) => Influences.Of(joints["eye_left"]);
        mesh.Tubes(Material.Chalk, 8, [.. Ball(-75, -45, -15, 15, 45, 75)], Eye);
        mesh.Tubes(Material.Leather, 8, [EyeRing(0.0120, 0.0060), EyeRing(0.0136, 0.0050)], Eye);
        mesh.Tubes(Material.Skin, 6, [Ear(0.066, 0.012, 0.022), Ear(0.082, 0.013, 0.030), Ear(0.088, 0.008, 0.024)], Rigid);
    }

    /// <summary>Rings of an eyeball, by their degrees of latitude from its equator to the front.</summary>
    private static IEnumerable<Ring> Ball(params double[] latitudes) => latitudes.Select(degrees =>
    {
        var latitude = degrees * Math.PI / 180;
        return EyeRing(Worker.EyeRadius * Math.Sin(latitude), Worker.EyeRadius * Math.Cos(latitude));
    });

    private static Ring EyeRing(double outwards, double radius) =>
        new(Worker.EyeAt + Vec.Front * outwards, Vec.Left * radius, Vec.Up * radius, outwards);

    private static Ring Ear(double side, double halfDepth, double halfHeight) =>
        new(new Vec(side, 1.655, -0.008), Vec.Front * halfDepth, Vec.Up * halfHeight, side);
}
