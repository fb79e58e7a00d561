using Modelling.Anatomy;
using Modelling.Geometry;
using Modelling.Mesh;

namespace Modelling.Bird;

/// <summary>Trunk, neck, head and beak. Girths in metres, by eye.</summary>
internal static class Plumage
{
    public static readonly Material White = new("white", 0.80, 0.80, 0.78);
    public static readonly Material Bill = new("bill", 0.75, 0.45, 0.05);
    public static readonly Material Dark = new("dark", 0.02, 0.02, 0.025);

    public static void Add(MeshBuilder mesh, JointTree joints)
    {
        (string, double)[] bones = [("neck_1", 0.022), ("neck_2", 0.016), ("neck_3", 0.014), ("neck_4", 0.014), ("head", 0.012)];
        var (spine, neck) = (new Limb(joints, [("trunk", 0), .. bones]), new Limb(joints, bones));
        mesh.Tube(White, 14,
        [
            spine.Ring("trunk", -0.200, 0.018, 0.008),
            spine.Ring("trunk", -0.180, 0.030, 0.017),
            spine.Ring("trunk", -0.150, 0.044, 0.031),
            spine.Ring("trunk", -0.105, 0.061, 0.050),
            spine.Ring("trunk", -0.050, 0.077, 0.068),
            spine.Ring("trunk", 0.010, 0.082, 0.078),
            spine.Ring("trunk", 0.070, 0.077, 0.076),
            spine.Ring("trunk", 0.115, 0.062, 0.062),
            spine.Ring("neck_1", 0.000, 0.050, 0.050),
            spine.Ring("neck_2", 0.000, 0.040, 0.040),
            spine.Ring("neck_3", 0.000, 0.034, 0.035),
            spine.Ring("neck_4", 0.000, 0.031, 0.033),
            spine.Ring("neck_4", 0.030, 0.031, 0.033),
            spine.Ring("neck_4", 0.045, 0.022, 0.022),
        ], (ring, point) => neck.Weights(ring.At - spine.Start("neck_1")));

        var head = new Part(mesh, joints["head"]);
        head.Tube(White, 12, Skull(0.112, 0.424, 0.012, 0.012), Skull(0.120, 0.426, 0.028, 0.026), Skull(0.140, 0.429, 0.037, 0.036), Skull(0.162, 0.430, 0.038, 0.037),
            Skull(0.184, 0.426, 0.031, 0.030), Skull(0.198, 0.422, 0.019, 0.018), Skull(0.202, 0.421, 0.011, 0.011));
        head.Tube(Bill, 8, Skull(0.190, 0.425, 0.013, 0.012), Skull(0.215, 0.424, 0.0095, 0.010), Skull(0.240, 0.423, 0.0075, 0.009), Skull(0.255, 0.419, 0.005, 0.008), Skull(0.262, 0.413, 0.002, 0.003));
        new Part(mesh, joints["jaw"]).Tube(Bill, 8, Skull(0.186, 0.415, 0.012, 0.007), Skull(0.215, 0.413, 0.0085, 0.0055), Skull(0.238, 0.412, 0.006, 0.006), Skull(0.252, 0.411, 0.002, 0.002));
        mesh.Tubes(Dark, 6, [Eye(0.030, 0.0065), Eye(0.0375, 0.0055)], (ring, point) => Influences.Of(joints["head"]));
    }

    /// <summary>An upright section across the bird's line of sight.</summary>
    private static Ring Skull(double depth, double height, double halfWidth, double halfHeight) =>
        new(new Vec(0, height, depth), Vec.Left * halfWidth, Vec.Up * halfHeight, depth);

    private static Ring Eye(double side, double radius) => new(new Vec(side, 0.436, 0.174), Vec.Front * radius, Vec.Up * radius, side);
}
