using Condyle.Evaluation;
using CsCheck;

namespace Condyle.Tests.Evaluation;

public sealed class TwoBoneReachTests
{
    private static readonly Gen<(double First, double Second, double AtRest, double Goal)> Limb =
        Gen.Select(Gen.Double[0.1, 1], Gen.Double[0.1, 1], Gen.Double[0.05, 0.95], Gen.Double[0, 4]).Select((first, second, rest, goal) =>
            (first, second, Math.Abs(first - second) + (rest * 2 * Math.Min(first, second)), goal));

    [Theory]
    [InlineData(2, 1, 10, 3)] // too far: both bones in line
    [InlineData(2, 1, 0.25, 1)] // too near: the second bone folds back
    [InlineData(1, 2, 0.25, 1)]
    [InlineData(1, 2, 2.5, 2.5)]
    [InlineData(1, 1, 1e6, 2)]
    public void Beyond_its_reach_the_tip_stops_at_the_nearest_point_that_it_can_reach(double first, double second, double goal, double reach) =>
        Assert.Equal(new TwoBoneReach(reach, first + second - reach, 1), TwoBoneReach.Of(goal, (first + second) * 0.9, first, second, 0, 0, 2));

    [Fact]
    public void Softness_changes_nothing_inside_the_hard_range_and_never_ends_short_of_what_rests() =>
        Gen.Select(Limb, Gen.Double[0, 0.5]).Sample((limb, soft) =>
        {
            var (first, second, atRest, goal) = limb;
            var (hard, with) = (TwoBoneReach.Of(goal, atRest, first, second, 0, 0, 1), TwoBoneReach.Of(goal, atRest, first, second, soft, 0, 1));
            if (goal <= first + second - soft || goal <= atRest)
                Assert.Equal(hard, with);
            else
                Assert.InRange(with.Distance, Math.Max(first + second - soft, atRest), first + second);
        });

    [Fact]
    public void The_soft_range_begins_with_slope_one_and_comes_to_the_full_length()
    {
        static double Reach(double goal) => TwoBoneReach.Of(goal, 1, 1, 1, 0.2, 0, 1).Distance;

        Assert.Equal(1.8, Reach(1.8));
        Near.Equal(1, (Reach(1.8 + 1e-6) - Reach(1.8)) / 1e-6, 1e-5);
        Near.Equal(1.8 + (0.2 * (1 - Math.Exp(-1))), Reach(2)); // one softness beyond the hard range
        Near.Equal(2, Reach(12));
    }

    [Fact]
    public void Stretched_in_full_the_tip_is_at_the_goal_up_to_the_greatest_factor() =>
        Gen.Select(Limb, Gen.Double[0, 0.3]).Sample((limb, soft) =>
        {
            var (first, second, atRest, goal) = limb;
            var reach = TwoBoneReach.Of(goal, atRest, first, second, soft, 1, 1.5);
            if (goal >= Math.Abs(first - second))
                Near.Equal(Math.Min(goal, reach.Distance * 1.5), reach.Distance * reach.Factor);
            Assert.InRange(reach.Factor, 1, 1.5);
        });

    [Fact]
    public void Half_the_weight_stretches_half_as_much()
    {
        Near.Equal(1.25, TwoBoneReach.Of(3, 1.9, 1, 1, 0, 0.5, 4).Factor);
        Near.Equal(1.5, TwoBoneReach.Of(3, 1.9, 1, 1, 0, 1, 4).Factor);
        Assert.Equal(1, TwoBoneReach.Of(3, 1.9, 1, 1, 0, 0, 4).Factor);
        Assert.Equal(1, TwoBoneReach.Of(1e-9, 1.9, 1, 1, 0, 1, 4).Factor);
    }

    [Fact]
    public void It_is_continuous() =>
        Gen.Select(Limb, Gen.Double[0, 0.3], Gen.Double[0, 1]).Sample((limb, soft, stretch) =>
        {
            var (first, second, atRest, goal) = limb;
            var (a, b) = (TwoBoneReach.Of(goal, atRest, first, second, soft, stretch, 2), TwoBoneReach.Of(goal + 1e-9, atRest, first, second, soft, stretch, 2));
            Near.Equal(a.Distance, b.Distance, 1.1e-9);
            Near.Equal(a.Factor, b.Factor, 1e-7);
        });
}
