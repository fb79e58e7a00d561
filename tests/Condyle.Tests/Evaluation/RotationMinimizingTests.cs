using Condyle.Evaluation;
using CsCheck;

namespace Condyle.Tests.Evaluation;

/// <summary>
/// Wang, Jüttler, Zheng and Liu 2008, "Computation of rotation minimizing frames", ACM TOG 27(1): double reflection has a global error of the fourth order,
/// the older projection (Klok 1986) and rotation (Bloomenthal 1990) methods one of the second, at about the same cost.
/// </summary>
public sealed class RotationMinimizingTests
{
    /// <summary>A helix with radius 1 and slope 0.5: two turns. Its torsion τ is constant, so the exact frame is the Frenet frame turned back by τ times the length.</summary>
    private const double Slope = 0.5;
    private const double End = 4 * Math.PI;

    private delegate Vector3d Step(Vector3d step, Vector3d along, Vector3d across, Vector3d alongNext);

    [Fact]
    public void The_error_of_double_reflection_goes_with_the_fourth_power_of_the_step_and_those_of_older_methods_with_the_second()
    {
        int[] segments = [16, 32, 64, 128, 256, 512];
        var ours = segments.Select(count => Error(RotationMinimizing.Carry, count)).ToList();
        var projection = segments.Select(count => Error((step, _, across, next) => (across - (step * (Vector3d.Dot(across, next) / Vector3d.Dot(step, next)))).Direction!.Value, count)).ToList();
        var rotation = segments.Select(count => Error((_, along, across, next) => Quaterniond.Between(along, next, across).Rotate(across), count)).ToList();

        // Klok projects along the step onto the plane across the next tangent. Halving the step divides the error by 16, or by 4, the better the smaller the step.
        for (var i = 2; i < segments.Length; i++)
        {
            Assert.InRange(ours[i - 1] / ours[i], 15, 17);
            Assert.InRange(projection[i - 1] / projection[i], 3.8, 4.2);
            Assert.InRange(rotation[i - 1] / rotation[i], 3.8, 4.2);
        }

        Assert.All(ours.Zip(projection.Zip(rotation, Math.Min)), errors => Assert.True(errors.First < errors.Second / 10, $"{errors}"));
        Assert.InRange(ours[^1], 0, 1e-8);
    }

    [Fact]
    public void In_a_plane_and_on_a_sphere_it_is_exact() => Gen.Select(Any.Rotation, Gen.Double[0.1, 3]).Sample((facing, turn) =>
    {
        // On a circle the normal of its plane stays, and so does the direction away from the centre of a sphere (the paper, section 5.3, from memory).
        var (from, to) = (new Vector3d(1, 0, 0), new Vector3d(Math.Cos(turn), Math.Sin(turn), 0));
        var (along, alongNext) = (new Vector3d(0, 1, 0), new Vector3d(-Math.Sin(turn), Math.Cos(turn), 0));
        Vector3d Carry(Vector3d across) => RotationMinimizing.Carry(facing.Rotate(to - from), facing.Rotate(along), facing.Rotate(across), facing.Rotate(alongNext));

        Near.Equal(facing.Rotate(Vector3d.UnitZ), Carry(Vector3d.UnitZ));
        Near.Equal(facing.Rotate(to), Carry(from));
    });

    [Fact]
    public void A_step_of_nothing_but_rounding_carries_nothing_astray() => Gen.Select(Any.Direction, Any.Direction).Sample((along, noise) =>
    {
        var across = along.AnyAcross();
        var next = (along + (noise.Across(along) * 1e-15)).Direction!.Value;
        Near.Equal(across, RotationMinimizing.Carry(noise * 1e-17, along, across, next));
        Near.Equal(across, RotationMinimizing.Carry(noise.Across(along) * 1e-17, along, across, next));
    });

    [Fact]
    public void It_is_finite_and_across_for_any_two_points() => Gen.Select(Any.Vector, Any.Direction, Any.Direction, Gen.Int[0, 3]).Sample((step, along, next, kind) =>
    {
        var (by, to) = kind switch { 0 => (Vector3d.Zero, next), 1 => (step, -along), 2 => (along * 0.3, along), _ => (step, next) };
        var carried = RotationMinimizing.Carry(by, along, along.AnyAcross(), to);

        Near.Equal(1, carried.Length);
        Near.Equal(0, Vector3d.Dot(carried, to));
    });

    /// <summary>The greatest angle between the carried and the exact direction across the helix.</summary>
    private static double Error(Step method, int segments)
    {
        var (across, greatest) = (ExactAcross(0), 0.0);
        for (var i = 1; i <= segments; i++)
        {
            var (from, to) = (End * (i - 1) / segments, End * i / segments);
            across = method(Point(to) - Point(from), Along(from), across, Along(to));
            greatest = Math.Max(greatest, 2 * Math.Asin(Math.Min(1, (across - ExactAcross(to)).Length / 2)));
        }

        return greatest;
    }

    private static Vector3d Point(double t) => new(Math.Cos(t), Math.Sin(t), Slope * t);

    private static Vector3d Along(double t) => new Vector3d(-Math.Sin(t), Math.Cos(t), Slope).Direction!.Value;

    // The Frenet frame turns by the torsion about the tangent; the exact frame undoes that.
    private static Vector3d ExactAcross(double t)
    {
        var normal = new Vector3d(-Math.Cos(t), -Math.Sin(t), 0);
        var length = t * Math.Sqrt(1 + (Slope * Slope));
        var torsion = Slope / (1 + (Slope * Slope));
        return Quaterniond.About(Along(t), -torsion * length).Rotate(normal);
    }
}
