using Modelling.Anatomy;
using Modelling.Geometry;
using Modelling.Mesh;

namespace Modelling.Bird;

/// <summary>Wings and tail: bones in a thin sleeve, and feathers as plates, each on its own joint. Sizes in metres, by eye.</summary>
internal static class Feathers
{
    private static readonly Material Grey = new("grey", 0.33, 0.36, 0.40);
    private static readonly Material Covert = new("covert", 0.40, 0.43, 0.47);

    private const double Thickness = 0.0022;

    public static void Add(MeshBuilder mesh, JointTree joints)
    {
        Sleeve(mesh, joints);
        Row(mesh, joints, "tertial", Seabird.Tertials, Grey, first: (0.165, 0.050), last: (0.175, 0.046), covert: 0.075);
        Row(mesh, joints, "secondary", Seabird.Secondaries, Grey, first: (0.170, 0.044), last: (0.175, 0.040), covert: 0.080);
        Row(mesh, joints, "primary", Seabird.Primaries, Plumage.Dark, first: (0.190, 0.040), last: (0.305, 0.034), covert: 0.070);
        Tail(mesh, joints);
    }

    private static void Row(MeshBuilder mesh, JointTree joints, string name, int count, Material material, (double Length, double Width) first, (double Length, double Width) last, double covert)
    {
        for (var i = 0; i < count; i++)
        {
            var share = i / (count - 1.0);
            var feather = joints[$"{name}_{i + 1}_left"];
            Plate(mesh, material, feather, first.Length + ((last.Length - first.Length) * share), first.Width + ((last.Width - first.Width) * share), above: 0);
            Plate(mesh, Covert, feather, covert, first.Width, above: 0.004);
        }
    }

    private static void Tail(MeshBuilder mesh, JointTree joints)
    {
        var middle = joints["tail_feather"];
        new Part(mesh, middle).Tube(Plumage.White, 4, Vane(middle.World, middle.World.X, middle.World.Z, 0.150, 0.036, above: 0));
        for (var i = 1; i <= Seabird.TailFeathers; i++)
        {
            var feather = joints[$"tail_feather_{i}_left"];
            mesh.Tubes(Plumage.White, 4, Vane(feather.World, feather.World.X, feather.World.Z, 0.150 - (0.003 * i), 0.034, above: 0), (ring, point) => Influences.Of(feather));
        }
    }

    private static void Plate(MeshBuilder mesh, Material material, ModelJoint feather, double length, double width, double above) =>
        mesh.Tubes(material, 4, Vane(feather.World, feather.World.Z, -feather.World.X, length, width, above), (ring, point) => Influences.Of(feather));

    /// <summary>A feather that lies along the frame's +Y: narrow at the quill, broad, and rounded at its tip.</summary>
    private static List<Ring> Vane(Frame frame, Vec across, Vec up, double length, double width, double above)
    {
        Ring At(double along, double share) => new(
            frame.Origin + frame.Y * (along * length) + up * above, across * (share * width / Math.Sqrt(2)), up * (Thickness / Math.Sqrt(2)), along);
        return [At(-0.03, 0.35), At(0.12, 0.85), At(0.5, 1), At(0.82, 0.9), At(0.94, 0.62), At(1, 0.2)];
    }

    private static void Sleeve(MeshBuilder mesh, JointTree joints)
    {
        var arm = new Limb(joints, ("shoulder_left", 0.02), ("elbow_left", 0.016), ("wrist_left", 0.014));
        mesh.Tubes(Covert, 8,
        [
            arm.Ring("shoulder_left", -0.030, 0.018, 0.026),
            arm.Ring("shoulder_left", 0.010, 0.017, 0.026),
            arm.Ring("shoulder_left", 0.060, 0.013, 0.020),
            arm.Ring("elbow_left", 0.000, 0.011, 0.017),
            arm.Ring("elbow_left", 0.060, 0.010, 0.016),
            arm.Ring("wrist_left", -0.020, 0.009, 0.015),
            arm.Ring("wrist_left", 0.000, 0.009, 0.015),
            arm.Ring("wrist_left", 0.050, 0.007, 0.012),
            arm.Ring("wrist_left", 0.105, 0.005, 0.009),
            arm.Ring("wrist_left", 0.118, 0.002, 0.004),
        ], (ring, point) => arm.Weights(ring.At));
    }
}
