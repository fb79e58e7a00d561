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
        var solved = TwoBoneTriangle.Solve(new(1, 2, 3), first, second, Vector3d.UnitX, distance, Vector3d.UnitY);

        Near.Equal(new Vector3d(1 + foot, 2 + height, 3), solved.Middle);
        Near.Equal(new Vector3d(1 + distance, 2, 3), solved.Tip);
    }

    [Theory]
    [InlineData(2, 1, 10, 2, 3)] // too far: both bones in line
    [InlineData(2, 1, 0.25, 2, 1)] // too near: the second bone folds back
    [InlineData(1, 2, 0.25, -1, 1)] // too near, with the longer bone second: the first bone points away
    public void Beyond_its_reach_the_tip_stops_at_the_nearest_point_that_it_can_reach(double first, double second, double distance, double middle, double tip)
    {
        var solved = TwoBoneTriangle.Solve(Vector3d.Zero, first, second, Vector3d.UnitX, distance, Vector3d.UnitY);

        Near.Equal(new Vector3d(middle, 0, 0), solved.Middle);
        Near.Equal(new Vector3d(tip, 0, 0), solved.Tip);
    }

    [Fact]
    public void Both_bones_keep_their_length_and_the_bend_is_on_its_side() =>
        Gen.Select(Any.Vector, Gen.Double[0, 2], Gen.Double[0, 2], Any.Direction, Gen.Double[0, 5]).Sample((root, first, second, line, distance) =>
        {
            var side = line.AnyAcross();
            var solved = TwoBoneTriangle.Solve(root, first, second, line, distance, side);

            Near.Equal(first, (solved.Middle - root).Length);
            Near.Equal(second, (solved.Tip - solved.Middle).Length);
            Assert.True(Vector3d.Dot(solved.Middle - root, side) >= -1e-12);
            Near.Equal(Math.Clamp(distance, Math.Abs(first - second), first + second), (solved.Tip - root).Length);
        });

    [Fact]
    public void Equal_bones_whose_goal_is_the_root_fold_to_the_side()
    {
        var solved = TwoBoneTriangle.Solve(Vector3d.Zero, 1, 1, Vector3d.UnitX, 0, Vector3d.UnitY);

        Near.Equal(Vector3d.UnitY, solved.Middle);
        Near.Equal(Vector3d.Zero, solved.Tip);
    }
}
