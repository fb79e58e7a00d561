using Modelling.Anatomy;
using Modelling.Geometry;
using Modelling.Mesh;

namespace Modelling.Bird;

/// <summary>Legs, toes and the webs between them. Girths in metres, by eye.</summary>
internal static class Shanks
{
    private static readonly Material Horn = new("horn", 0.62, 0.36, 0.28);

    public static void Add(MeshBuilder mesh, JointTree joints)
    {
        var leg = new Limb(joints, ("hip_left", 0.02), ("knee_left", 0.018), ("ankle_left", 0.010), ("ball_left", 0.006));
        mesh.Tubes(Plumage.White, 8,
        [
            leg.Ring("hip_left", -0.010, 0.018, 0.024),
            leg.Ring("hip_left", 0.035, 0.021, 0.028),
            leg.Ring("knee_left", 0.000, 0.020, 0.025),
            leg.Ring("knee_left", 0.040, 0.015, 0.018),
            leg.Ring("knee_left", 0.080, 0.009, 0.010),
            leg.Ring("knee_left", 0.086, 0.005, 0.006),
        ], (ring, point) => leg.Weights(ring.At));
        mesh.Tubes(Horn, 6,
        [
            leg.Ring("knee_left", 0.070, 0.005, 0.006),
            leg.Ring("ankle_left", 0.000, 0.0065, 0.0075),
            leg.Ring("ankle_left", 0.030, 0.005, 0.006),
            leg.Ring("ankle_left", 0.062, 0.005, 0.006),
            leg.Ring("ball_left", 0.000, 0.007, 0.007),
            leg.Ring("ball_left", 0.010, 0.006, 0.005),
        ], (ring, point) => leg.Weights(ring.At));

        var toes = Seabird.Toes.Select(toe => new Limb(joints, ($"{toe}_1_left", 0.004), ($"{toe}_2_left", 0.006))).ToList();
        foreach (var (toe, name) in toes.Zip(Seabird.Toes))
        {
            Ring At(double along, double radius) => toe.Ring($"{name}_1_left", along, radius, radius * 0.8);
            mesh.Tubes(Horn, 6, [At(-0.006, 0.004), At(0.004, 0.005), At(0.029, 0.0045), At(0.050, 0.004), At(Seabird.ToeLength, 0.0015)], (ring, point) => toe.Weights(ring.At));
        }

        for (var i = 0; i + 1 < toes.Count; i++)
            Web(mesh, toes[i], Seabird.Toes[i], toes[i + 1], Seabird.Toes[i + 1]);
    }

    /// <summary>A skin between two toes, that follows both by halves.</summary>
    private static void Web(MeshBuilder mesh, Limb one, string oneName, Limb other, string otherName)
    {
        Ring Between(double along)
        {
            var (from, to) = (one.Ring($"{oneName}_1_left", along, 0, 0).Centre, other.Ring($"{otherName}_1_left", along, 0, 0).Centre);
            return new Ring((from + to) * 0.5, (to - from) * (0.5 * Math.Sqrt(2)), Vec.Up * 0.001, along);
        }

        mesh.Tubes(Horn, 4, [Between(0), Between(0.02), Between(0.036), Between(0.05)], (ring, point) => Mean(one.Weights(ring.At), other.Weights(ring.At)));
    }

    private static Influences Mean(Influences one, Influences other)
    {
        var mean = one;
        var given = 1.0;
        foreach (var (joint, weight) in other.Weights)
        {
            // What comes later takes from what was there: the shares end up as halves of both.
            given += weight;
            mean = mean.With(joint, weight / given);
        }

        return mean;
    }
}
