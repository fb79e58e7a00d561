using Condyle.Evaluation;
using Condyle.Tests.Shared;
using CsCheck;

namespace Condyle.Tests.Evaluation;

/// <summary>The published behaviour of FABRIK (Aristidou and Lasenby 2011, Graphical Models 73(5)).</summary>
public sealed class FabrikTests
{
    private static readonly Gen<Vector3d[]> Chain = Any.Vector.Where(v => v.Length > 0.1).Array[2, 10];

    [Fact]
    public void It_needs_about_as_many_rounds_as_the_paper_reports()
    {
        // Table 1 of the paper, from memory: 15.461 rounds on average for 10 joints without limits and goals within reach. Its tolerance and its goals,
        // from memory too, are not given to the digit: here the goals are spread over the whole reach, the chain starts straight, and a thousandth of it is near enough.
        var choices = new RandomChoices(2011);
        var counts = Enumerable.Range(0, 500).Select(_ =>
        {
            var goal = choices.Direction() * (float)Math.Cbrt(choices.Between(0f, 1f));
            return Rounds(bones: 10, goal, tolerance: 1e-3);
        }).ToList();

        Assert.InRange(counts.Average(), 10, 20);
        Assert.InRange(counts.Order().ElementAt(250), 2, 15.461);
    }

    [Fact]
    public void A_looser_tolerance_needs_fewer_rounds()
    {
        Vector3d goal = new(0.3, 0.5, 0.2);
        int[] counts = [.. new[] { 1e-2, 1e-3, 1e-4, 1e-6 }.Select(tolerance => Rounds(10, goal, tolerance))];

        Assert.Equal(counts.Order(), counts);
        Assert.InRange(counts[^1], counts[0] + 1, 40);
    }

    [Fact]
    public void Bones_keep_their_length_and_the_tip_comes_near_the_goal_or_to_the_nearest_point_that_it_can_reach() =>
        Gen.Select(Chain, Any.Vector, Gen.Double[0, 1.5]).Sample((bones, towards, share) =>
        {
            var lengths = bones.Select(bone => bone.Length).ToArray();
            var (total, inner) = (lengths.Sum(), Math.Max(0, (2 * lengths.Max()) - lengths.Sum()));
            var solved = bones.Select(bone => bone.Direction!.Value).ToArray();
            var plane = BendPlane.Spanned(towards, towards.AnyAcross());
            var distance = total * share;
            var solver = new Fabrik(lengths, null);
            solver.Solve(solved, plane, distance, total, 1e-9 * total, 200);

            Assert.All(solved, bone => Near.Equal(1, bone.Length));
            if (distance >= total || distance < inner)
                Near.Equal(plane.Line * Math.Clamp(distance, inner, total), solver.Tip(solved), 1e-9);
            else
                Assert.True(Miss(solved) <= Math.Max(Miss(bones.Select(bone => bone.Direction!.Value)), 1e-9 * total));

            double Miss(IEnumerable<Vector3d> directions) => (solver.Tip([.. directions]) - (plane.Line * distance)).Length;
        });

    [Fact]
    public void Beyond_reach_it_takes_no_round_and_stretches_out_straight()
    {
        var bones = new[] { Vector3d.UnitX, Vector3d.UnitY, Vector3d.UnitZ };
        var plane = BendPlane.Spanned(new Vector3d(1, 1, 1), Vector3d.UnitX);

        Assert.Equal(0, new Fabrik([1, 2, 3], null).Solve(bones, plane, 100, 2, 1e-6, 32));
        Assert.All(bones, bone => Near.Equal(plane.Line, bone));
    }

    [Fact]
    public void Too_near_for_its_longest_bone_it_folds()
    {
        var bones = new[] { Vector3d.UnitX, Vector3d.UnitY, Vector3d.UnitZ };
        var plane = BendPlane.Spanned(Vector3d.UnitX, Vector3d.UnitY);
        new Fabrik([1, 4, 1], null).Solve(bones, plane, 0.5, 4, 1e-6, 32);

        Assert.Equal([-Vector3d.UnitX, Vector3d.UnitX, -Vector3d.UnitX], bones);
    }

    private static int Rounds(int bones, Vector3d goal, double tolerance) =>
        new Fabrik([.. Enumerable.Repeat(1.0 / bones, bones)], null).Solve(
            [.. Enumerable.Repeat(Vector3d.UnitX, bones)], BendPlane.Spanned(goal, goal.AnyAcross()), goal.Length, 1, tolerance, 1000);
}
