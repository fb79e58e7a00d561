using Condyle.Evaluation;
using CsCheck;

namespace Condyle.Tests.Evaluation;

/// <summary>Worked triangles; the law of cosines is Euclid, Elements, book II, propositions 12 and 13.</summary>
public sealed class TwoBoneTriangleTests
{
    [Theory]
    [InlineData(3, 4, 5, 1.8, 2.4)] // the right triangle 3-4-5: the altitude on its hypotenuse is 3·4/5
    [InlineData(13, 15, 14, 5, 12)] // the triangle 13-14-15 (Heron, Metrica I.5): its altitude on 14 is 12 and cuts it into 5 and 9
    [InlineData(1, 1, 1, 0.5, 0.8660254037844386)] // equilateral: √3/2
    [InlineData(13, 15, 4, -5, 12)] // the triangle 4-13-15, obtuse at the root: its area is 24 (Heron's formula), so the altitude on 4 is 12
    public void The_middle_joint_stands_where_the_worked_triangle_has_it(double first, double second, double distance, double foot, double height)
    {
        var solved = TwoBoneTriangle.Solve(first, second, distance);

        Near.Equal(foot, solved.Foot);
        Near.Equal(height, solved.Height);
    }

    [Theory]
    [InlineData(2, 1, 3, 2)] // both bones in line
    [InlineData(2, 1, 1, 2)] // the second bone folds back
    [InlineData(1, 2, 1, -1)] // the first bone points away
    public void At_the_ends_of_its_reach_the_triangle_is_flat(double first, double second, double distance, double foot) =>
        Assert.Equal(new TwoBoneTriangle(foot, 0), TwoBoneTriangle.Solve(first, second, distance));

    [Fact]
    public void Both_bones_keep_their_length() =>
        Gen.Select(Gen.Double[0, 2], Gen.Double[0, 2], Gen.Double[0, 1]).Sample((first, second, share) =>
        {
            var distance = Math.Abs(first - second) + (share * 2 * Math.Min(first, second));
            var solved = TwoBoneTriangle.Solve(first, second, distance);

            Near.Equal(first, new Vector3d(solved.Foot, solved.Height, 0).Length);
            Near.Equal(second, new Vector3d(distance - solved.Foot, solved.Height, 0).Length);
        });

    [Theory]
    [InlineData(1e-12)]
    [InlineData(1e-15)]
    public void An_almost_straight_limb_keeps_the_digits_of_its_height(double shortBy)
    {
        // Two bones of length one: the height is √(1 − (1 − s/2)²) = √(s − s²/4), where s is what the distance is short of 2.
        var distance = 2 - shortBy;
        var exactlyShort = 2 - distance; // exact in floating point, by Sterbenz

        var height = TwoBoneTriangle.Solve(1, 1, distance).Height;

        Near.Equal(1, height / Math.Sqrt(exactlyShort - (exactlyShort * exactlyShort / 4)), 1e-12);
    }

    [Fact]
    public void Equal_bones_whose_goal_is_the_root_fold_to_the_side() =>
        Assert.Equal(new TwoBoneTriangle(0, 1), TwoBoneTriangle.Solve(1, 1, 0));
}
