using Modelling.Anatomy;

namespace Modelling.Mesh;

/// <summary>The sleeves. Girths in metres, by eye.</summary>
internal static class Arms
{
    public static void Add(MeshBuilder mesh, JointTree joints)
    {
        var arm = new Limb(joints,
            ("collar_left", 0.03), ("shoulder_left", 0.06), ("shoulder_twist_left", 0.09), ("elbow_left", 0.045),
            ("elbow_twist_1_left", 0.04), ("elbow_twist_2_left", 0.04), ("wrist_left", 0.02));

        mesh.Tubes(Material.Jacket, 10,
        [
            arm.Ring("collar_left", 0.080, 0.036, 0.048),
            arm.Ring("collar_left", 0.120, 0.050, 0.066),
            arm.Ring("shoulder_left", 0.000, 0.052, 0.070),
            arm.Ring("shoulder_left", 0.045, 0.060, 0.071),
            arm.Ring("shoulder_left", 0.110, 0.060, 0.068),
            arm.Ring("shoulder_twist_left", 0.020, 0.058, 0.063),
            arm.Ring("elbow_left", -0.055, 0.052, 0.055),
            arm.Ring("elbow_left", 0.000, 0.051, 0.054),
            arm.Ring("elbow_left", 0.050, 0.051, 0.054),
            arm.Ring("elbow_twist_1_left", 0.020, 0.048, 0.050),
            arm.Ring("elbow_twist_2_left", 0.010, 0.042, 0.043),
            arm.Ring("wrist_left", -0.020, 0.038, 0.040),
            arm.Ring("wrist_left", -0.017, 0.042, 0.044),
            arm.Ring("wrist_left", 0.006, 0.042, 0.044),
            arm.Ring("wrist_left", 0.007, 0.028, 0.030),
        ], (ring, point) => arm.Weights(ring.At));
    }
}
