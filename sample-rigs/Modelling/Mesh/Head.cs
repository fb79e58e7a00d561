using Modelling.Anatomy;
using Modelling.Geometry;

namespace Modelling.Mesh;

/// <summary>Neck, head, face and a woollen cap. Heights and girths in metres, by eye.</summary>
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

        mesh.Tubes(Material.Leather, 6, [Eye(0.094, 0.010), Eye(0.1005, 0.008)], Rigid);
        mesh.Tubes(Material.Skin, 6, [Ear(0.066, 0.012, 0.022), Ear(0.082, 0.013, 0.030), Ear(0.088, 0.008, 0.024)], Rigid);
    }

    private static Ring Eye(double depth, double radius) =>
        new(new Vec(0.030, 1.672, depth), Vec.Left * (radius * 1.2), Vec.Up * radius, depth);

    private static Ring Ear(double side, double halfDepth, double halfHeight) =>
        new(new Vec(side, 1.655, -0.008), Vec.Front * halfDepth, Vec.Up * halfHeight, side);
}
