using Condyle.Evaluation;
using CsCheck;
using MathNet.Numerics.LinearAlgebra;
using MathNet.Numerics.Optimization;

namespace Condyle.Tests.Evaluation;

/// <summary>Properties of the weighted average of Buss and Fillmore 2001 (ACM TOG 20(2), 95–126), and a general minimiser as the outside check.</summary>
public sealed class SphericalAverageTests
{
    // All within 50° of one rotation, where the average is unique.
    private static readonly Gen<(Quaterniond[] Rotations, double[] Weights)> Cluster = Gen.Int[3, 6].SelectMany(count => Gen.Select(
        Any.Rotation,
        Gen.Select(Any.Direction, Gen.Double[0, 0.87]).Array[count],
        Gen.Double[0.05, 1].Array[count])
        .Select((centre, turns, weights) => ((Quaterniond[])[.. turns.Select(turn => centre * Quaterniond.About(turn.Item1, turn.Item2))], (double[])[.. weights.Select(weight => weight / weights.Sum())])));

    [Fact]
    public void The_order_of_the_rotations_and_their_signs_do_not_matter() =>
        Gen.Select(Cluster, Gen.Int[0, 1000]).Sample((cluster, seed) =>
        {
            var order = Enumerable.Range(0, cluster.Rotations.Length).ToArray();
            new Random(seed).Shuffle(order);
            var shuffled = order.Select(i => i % 2 == 0 ? cluster.Rotations[i] : -cluster.Rotations[i]).ToArray();

            Near.Equal(SphericalAverage.Of(cluster.Rotations, cluster.Weights), SphericalAverage.Of(shuffled, [.. order.Select(i => cluster.Weights[i])]));
        });

    [Fact]
    public void For_two_rotations_it_is_the_slerp_also_when_others_have_no_weight() =>
        Gen.Select(Any.Rotation, Any.Rotation, Any.Rotation, Gen.Double[0.01, 0.99]).Sample((a, b, c, t) =>
        {
            Near.Equal(Slerp.Between(a, b, t), SphericalAverage.Of([a, b], [1 - t, t]));
            Near.Equal(Slerp.Between(a, b, t), SphericalAverage.Of([a, c, b], [1 - t, 0, t]));
        });

    [Fact]
    public void A_rotation_given_twice_counts_with_both_weights() =>
        Gen.Select(Any.Rotation, Any.Direction, Gen.Double[0.1, 2], Gen.Double[0.1, 0.8]).Sample((a, axis, turn, t) =>
        {
            var b = a * Quaterniond.About(axis, turn);
            Near.Equal(Slerp.Between(a, b, t), SphericalAverage.Of([a, b, -b], [1 - t, t * 0.3, t * 0.7]), 1e-8);
        });

    [Fact]
    public void About_one_axis_it_is_the_mean_of_the_angles() =>
        Gen.Select(Any.Direction, Gen.Double[-0.7, 0.7].Array[4]).Sample((axis, angles) =>
            Near.Equal(
                Quaterniond.About(axis, angles.Average()),
                SphericalAverage.Of([.. angles.Select(angle => Quaterniond.About(axis, angle))], [0.25, 0.25, 0.25, 0.25])));

    [Fact]
    public void Turning_all_rotations_turns_the_average() =>
        Gen.Select(Cluster, Any.Rotation, Any.Rotation).Sample((cluster, before, after) =>
            Near.Equal(
                after * SphericalAverage.Of(cluster.Rotations, cluster.Weights) * before,
                SphericalAverage.Of([.. cluster.Rotations.Select(rotation => after * rotation * before)], cluster.Weights)));

    [Fact]
    public void A_general_minimiser_finds_the_same_rotation() =>
        Cluster.Sample(
            cluster =>
            {
                var found = SphericalAverage.Of(cluster.Rotations, cluster.Weights);
                var start = cluster.Rotations[0];
                Quaterniond At(Vector<double> v) => start * (new Vector3d(v[0], v[1], v[2]) is { Direction: { } axis } turn ? Quaterniond.About(axis, turn.Length) : Quaterniond.Identity);
                double Cost(Vector<double> v) => cluster.Rotations.Zip(cluster.Weights, (r, w) => w * Math.Pow(Quaterniond.Angle(At(v), r), 2)).Sum();

                var least = NelderMeadSimplex.Minimum(ObjectiveFunction.Value(Cost), Vector<double>.Build.Dense(3), 1e-14, 5000);

                Near.Equal(At(least.MinimizingPoint), found, 1e-5);
            },
            iter: 50);
}
