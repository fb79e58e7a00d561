using Condyle.Evaluation;
using CsCheck;

namespace Condyle.Tests.Evaluation;

public sealed class ResponseCurveTests
{
    /// <summary>The Hermite spline through a cubic's values and slopes is that cubic (Hermite interpolation; any textbook of numerical analysis).</summary>
    [Fact]
    public void Keys_with_the_values_and_slopes_of_a_cubic_give_the_cubic_back() =>
        Gen.Select(Any.Vector, Gen.Float[-2, 2], Gen.Float[-3, 3]).Sample((c, lead, x) =>
        {
            double P(double at) => ((((lead * at) + c.X) * at) + c.Y) * at + c.Z;
            double Slope(double at) => (((3 * lead * at) + (2 * c.X)) * at) + c.Y;
            var curve = CurveOf(response =>
            {
                foreach (var at in new[] { -3f, 1, -0.5f, 3 })
                    response.Key(at, (float)P(at), (float)Slope(at));
            });
            Near.Equal(P(x), curve.At(x), 2e-5);
        });

    [Theory]
    [InlineData(0, 10)]
    [InlineData(0.5, 15)]
    [InlineData(1, 20)]
    [InlineData(1.75, 12.5)]
    [InlineData(2, 10)]
    [InlineData(-1, 10)]
    [InlineData(9, 10)]
    public void Without_slopes_the_curve_is_straight_between_its_keys_and_holds_at_its_ends(double x, double expected) =>
        Near.Equal(expected, CurveOf(response => response.Key(1, 20).Key(0, 10).Key(2, 10)).At(x));

    /// <summary>glTF 2.0, appendix C: for equal values and slopes of 0 and m over a distance of 1 the spline is m·(t³ − t²).</summary>
    [Fact]
    public void A_key_without_a_slope_beside_one_with_a_slope_is_reached_by_the_straight_line_between_them()
    {
        var curve = CurveOf(response => response.Key(0, 0).Key(1, 0, slope: 4));
        Near.Equal(4 * (0.125 - 0.25), curve.At(0.5));
        Near.Equal(4 * ((0.25 * 0.25 * 0.25) - (0.25 * 0.25)), curve.At(0.25));
    }

    [Fact]
    public void Continued_it_goes_on_straight_by_the_slopes_of_its_ends()
    {
        var curve = CurveOf(response => response.Key(0, 0, slope: -1).Key(1, 5).Continued());
        Near.Equal(2, curve.At(-2));
        Near.Equal(15, curve.At(3));
    }

    [Fact]
    public void A_single_key_is_a_constant_or_continued_a_line()
    {
        Near.Equal(7, CurveOf(response => response.Key(2, 7, slope: 3)).At(100));
        Near.Equal(10, CurveOf(response => response.Key(2, 7, slope: 3).Continued()).At(3));
        Near.Equal(7, CurveOf(response => response.Key(2, 7).Continued()).At(3));
    }

    [Fact]
    public void Two_keys_at_one_value_are_refused() => Assert.Contains(
        "two keys at 0.5",
        Assert.Throws<RigGeometryException>(() => CurveOf(response => response.Key(0.5f, 1).Key(0, 0).Key(0.5f, 2))).Message,
        StringComparison.Ordinal);

    [Theory]
    [InlineData(float.NaN, 0, 0)]
    [InlineData(0, float.PositiveInfinity, 0)]
    [InlineData(0, 0, float.NegativeInfinity)]
    public void A_key_that_is_no_finite_number_is_refused(float at, float value, float slope) =>
        Assert.Contains("no finite number", Assert.Throws<ArgumentException>(() => CurveOf(response => response.Key(at, value, slope))).Message, StringComparison.Ordinal);

    private static ResponseCurve CurveOf(Action<Response> say)
    {
        var model = TestRig.ModelOf(rig => say(rig.Response(rig.Control("hand").Dial("curl", -1, 1))));
        return ResponseCurve.Of(Assert.Single(model.Responses));
    }
}
