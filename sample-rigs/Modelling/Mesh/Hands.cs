using Modelling.Anatomy;
using Modelling.Geometry;

namespace Modelling.Mesh;

/// <summary>Palms and fingers. Girths in metres, by eye.</summary>
internal static class Hands
{
    public static void Add(MeshBuilder mesh, JointTree joints)
    {
        var palm = new Limb(joints, ("wrist_left", 0.02));
        var middle = new Vec(0, 0, -0.004);
        mesh.Tubes(Material.Skin, 8,
        [
            palm.Ring("wrist_left", -0.020, 0.020, 0.026, 2.3),
            palm.Ring("wrist_left", 0.012, 0.019, 0.030, 2.4),
            palm.Ring("wrist_left", 0.045, 0.018, 0.038, 2.8, middle),
            palm.Ring("wrist_left", 0.080, 0.016, 0.045, 2.8, middle),
            palm.Ring("wrist_left", 0.100, 0.014, 0.043, 2.8, middle),
            palm.Ring("wrist_left", 0.108, 0.009, 0.036, 2.8, middle),
        ], (ring, point) => palm.Weights(ring.At));

        Finger(mesh, joints, "thumb", thickness: 0.0145, inside: 0.004, tip: 0.026);
        Finger(mesh, joints, "index", thickness: 0.0110, inside: 0.020, tip: 0.020);
        Finger(mesh, joints, "middle", thickness: 0.0115, inside: 0.020, tip: 0.022);
        Finger(mesh, joints, "ring", thickness: 0.0110, inside: 0.020, tip: 0.022);
        Finger(mesh, joints, "little", thickness: 0.0095, inside: 0.016, tip: 0.020);
    }

    private static void Finger(MeshBuilder mesh, JointTree joints, string name, double thickness, double inside, double tip)
    {
        var (first, second, third) = ($"{name}_1_left", $"{name}_2_left", $"{name}_3_left");
        var finger = new Limb(joints, (first, 0.010), (second, 0.008), (third, 0.007));
        Ring At(string joint, double beyond, double width) => finger.Ring(joint, beyond, thickness * width, thickness * width);

        mesh.Tubes(Material.Skin, 6,
        [
            At(first, -inside, 0.80),
            At(first, 0.004, 1.08),
            At(second, -0.014, 0.98),
            At(second, 0, 1.02),
            At(third, -0.006, 0.92),
            At(third, 0.004, 0.92),
            At(third, tip * 0.75, 0.80),
            At(third, tip, 0.45),
        ], (ring, point) => finger.Weights(ring.At));
    }
}
