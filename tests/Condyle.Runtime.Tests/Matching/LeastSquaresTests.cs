using Condyle.Runtime.Matching.Fitting;

namespace Condyle.Runtime.Tests.Matching;

public class LeastSquaresTests
{
    /// <summary>Rosenbrock's valley (1960, The Computer Journal 3(3)): its least sum is zero, at (1, 1).</summary>
    [Fact]
    public void A_narrow_valley_that_bends_is_followed_to_its_end()
    {
        var (found, sum) = new LeastSquares(at => [10 * (at[1] - (at[0] * at[0])), 1 - at[0]], 1e-6).Minimize([-1.2, 1], 1e-20);
        Assert.Equal(1, found[0], 1e-8);
        Assert.Equal(1, found[1], 1e-8);
        Assert.True(sum < 1e-16, $"{sum}");
    }

    /// <summary>Where no line goes through all points, the one of least squares by the closed form: slope = Σ(x − x̄)(y − ȳ) / Σ(x − x̄)².</summary>
    [Fact]
    public void What_cannot_be_met_comes_as_near_as_can_be()
    {
        double[] x = [0, 1, 2, 3, 5], y = [1, 2.5, 2, 4.5, 5];
        var (found, _) = new LeastSquares(at => [.. x.Zip(y, (along, height) => at[0] + (at[1] * along) - height)], 1e-6).Minimize([7, -3], 0);
        var (meanX, meanY) = (x.Average(), y.Average());
        var slope = x.Zip(y, (along, height) => (along - meanX) * (height - meanY)).Sum() / x.Sum(along => (along - meanX) * (along - meanX));
        Assert.Equal(slope, found[1], 1e-7);
        Assert.Equal(meanY - (slope * meanX), found[0], 1e-7);
    }

    [Fact]
    public void An_argument_that_changes_nothing_stays_as_it_is()
    {
        var (found, sum) = new LeastSquares(at => [at[0] - 3, at[2] + at[0]], 1e-6).Minimize([0, 0.25, 0], 1e-20);
        Assert.Equal(0.25, found[1]);
        Assert.True(sum < 1e-16, $"{sum}");
    }

    [Fact]
    public void What_is_not_finite_ends_it_where_it_began()
    {
        var (found, sum) = new LeastSquares(_ => [double.NaN], 1e-6).Minimize([2], 0);
        Assert.Equal((2, double.PositiveInfinity), (found[0], sum));
    }
}
