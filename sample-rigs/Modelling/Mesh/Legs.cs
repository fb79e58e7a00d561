using Modelling.Anatomy;
using Modelling.Geometry;

namespace Modelling.Mesh;

/// <summary>Trouser legs and boots. Girths in metres, by eye.</summary>
internal static class Legs
{
    public static void Add(MeshBuilder mesh, JointTree joints)
    {
        var leg = new Limb(joints,
            ("hip_left", 0.07), ("hip_twist_left", 0.10), ("knee_left", 0.055), ("ankle_left", 0.035), ("toes_left", 0.03));

        mesh.Tubes(Material.Trousers, 12,
        [
            leg.Ring("hip_left", -0.040, 0.070, 0.085),
            leg.Ring("hip_left", 0.010, 0.086, 0.104),
            leg.Ring("hip_left", 0.090, 0.088, 0.104),
            leg.Ring("hip_left", 0.180, 0.083, 0.096),
            leg.Ring("hip_twist_left", 0.080, 0.074, 0.084),
            leg.Ring("knee_left", -0.060, 0.067, 0.074),
            leg.Ring("knee_left", 0.000, 0.064, 0.070),
            leg.Ring("knee_left", 0.060, 0.062, 0.068),
            leg.Ring("knee_left", 0.140, 0.062, 0.070),
            leg.Ring("knee_left", 0.230, 0.060, 0.067),
            leg.Ring("knee_left", 0.300, 0.062, 0.068),
            leg.Ring("knee_left", 0.305, 0.045, 0.050),
        ], (ring, point) => leg.Weights(ring.At));

        mesh.Tubes(Material.Leather, 10,
        [
            leg.Ring("ankle_left", -0.190, 0.044, 0.049),
            leg.Ring("ankle_left", -0.180, 0.052, 0.057),
            leg.Ring("ankle_left", -0.110, 0.050, 0.056),
            leg.Ring("ankle_left", -0.050, 0.045, 0.054),
            Shaft(joints, leg, 0.070, 0.043, 0.058),
            Shaft(joints, leg, 0.030, 0.040, 0.055),
        ], (ring, point) => leg.Weights(ring.At));

        mesh.Tubes(Material.Leather, 10,
        [
            Foot(joints, leg, -0.078, 0.026, 0.052),
            Foot(joints, leg, -0.070, 0.036, 0.075),
            Foot(joints, leg, -0.020, 0.044, 0.105),
            Foot(joints, leg, 0.030, 0.046, 0.112),
            Foot(joints, leg, 0.080, 0.049, 0.088),
            Foot(joints, leg, 0.128, 0.053, 0.072),
            Foot(joints, leg, 0.168, 0.051, 0.066),
            Foot(joints, leg, 0.200, 0.040, 0.054),
            Foot(joints, leg, 0.212, 0.024, 0.036),
        ], (ring, point) => leg.Weights(ring.At));
    }

    /// <summary>A level section about the ankle.</summary>
    private static Ring Shaft(JointTree joints, Limb leg, double height, double halfWidth, double halfDepth)
    {
        var ankle = joints["ankle_left"].World.Origin;
        return new Ring(ankle with { Y = height, Z = ankle.Z - 0.006 }, Vec.Left * halfWidth, -Vec.Front * halfDepth, leg.Start("ankle_left"));
    }

    /// <summary>An upright section that stands on the ground, at a distance in front of the ankle.</summary>
    private static Ring Foot(JointTree joints, Limb leg, double inFront, double halfWidth, double height)
    {
        var ankle = joints["ankle_left"].World.Origin;
        var toes = joints["toes_left"].World.Origin;
        // Past the heel everything is the foot's, whatever its distance along the leg.
        var at = Math.Max(leg.Start("toes_left") + ankle.Z + inFront - toes.Z, leg.Start("ankle_left") + 0.036);
        return new Ring(new Vec(ankle.X + 0.06 * (inFront + 0.07), height / 2, ankle.Z + inFront), Vec.Left * halfWidth, Vec.Up * (height / 2), at, 3.2);
    }
}
