using Condyle.Evaluation;
using Condyle.Runtime.Baking;
using CsCheck;

namespace Condyle.Runtime.Tests.Baking;

/// <summary>The power series agree with the functions that they stand for, near and far.</summary>
public class NearRotationsTests
{
    private static readonly Gen<Quaterniond> Turns = Gen.Select(Gen.Double[-1, 1], Gen.Double[-1, 1], Gen.Double[-1, 1], Gen.Double[-1, 1], (x, y, z, w) => new Quaterniond(x, y, z, w).Normalized())
        .Where(turn => turn.Length > 0.5);

    /// <summary>Turns from nothing that can be seen to half a turn, many around where the series end.</summary>
    private static readonly Gen<double> Radians = Gen.OneOf(Gen.Double[-9, 0.49].Select(power => Math.Pow(10, power)), Gen.Double[0.05, 0.08]);

    [Fact]
    public void A_rotation_on_the_way_is_that_of_the_slerp() => Gen.Select(Turns, Turns, Radians, Gen.Double[0, 1], Gen.Bool).Sample((from, axis, radians, amount, isFlipped) =>
    {
        var to = from * Quaterniond.About(axis.Vector.Direction ?? Vector3d.UnitX, radians);
        var (actual, should) = (NearRotations.Between(from, isFlipped ? -to : to, amount), Slerp.Between(from, to, amount));
        Assert.True((actual - should).Length < 2e-15, $"{actual} {should}");
    });

    [Fact]
    public void An_angle_is_that_of_the_arc_tangent() => Gen.Select(Turns, Turns, Radians, Gen.Bool).Sample((a, axis, radians, isFlipped) =>
    {
        var b = a * Quaterniond.About(axis.Vector.Direction ?? Vector3d.UnitX, radians);
        Assert.Equal(Quaterniond.Angle(a, b), NearRotations.Angle(a, isFlipped ? -b : b), 2e-15);
    });
}
