using Condyle.Evaluation;
using CsCheck;

namespace Condyle.Tests.Evaluation;

/// <summary>The identities of the decomposition (Dobrowolski 2015, "Swing-twist decomposition in Clifford algebra"; from memory).</summary>
public sealed class SwingTwistTests
{
    [Fact]
    public void A_rotation_is_its_swing_after_its_twist_the_twist_about_the_axis_and_the_swing_about_one_across_it() => Gen.Select(Any.Rotation, Any.Direction).Sample((q, axis) =>
    {
        if (SwingTwist.Angle(q, axis) is not { } angle)
            return;
        var twist = Quaterniond.About(axis, angle);
        var swing = q * twist.Inverse;
        Near.Equal(q, swing * twist);
        Near.Equal(0, Vector3d.Dot(swing.Vector, axis));
        Near.Equal(0, Vector3d.Cross(twist.Vector, axis).Length);
    });

    [Fact]
    public void The_twist_is_the_same_whether_the_swing_comes_before_or_after_and_for_both_quaternions() => Gen.Select(Any.Direction, Any.Direction, Gen.Double[-3.1, 3.1], Gen.Double[-3.1, 3.1]).Sample((axis, other, twist, swing) =>
    {
        if (other.Across(axis).Direction is not { } across)
            return;
        var (s, t) = (Quaterniond.About(across, swing), Quaterniond.About(axis, twist));
        foreach (var q in new[] { s * t, t * s, -(s * t) })
            Near.Equal(twist, SwingTwist.Angle(q, axis)!.Value, 1e-8);
    });

    /// <summary>No rotation about the axis is nearer to the whole one (the same source).</summary>
    [Fact]
    public void The_twist_is_the_rotation_about_the_axis_nearest_to_the_whole() => Gen.Select(Any.Rotation, Any.Direction, Gen.Double[-3.1, 3.1]).Sample((q, axis, other) =>
    {
        if (SwingTwist.Angle(q, axis) is { } angle)
            Assert.True(Quaterniond.Angle(q, Quaterniond.About(axis, angle)) <= Quaterniond.Angle(q, Quaterniond.About(axis, other)) + 1e-9);
    });

    [Fact]
    public void A_half_turn_across_leaves_no_twist_and_a_half_turn_about_is_positive()
    {
        Assert.Null(SwingTwist.Angle(new(1, 0, 0, 0), Vector3d.UnitY));
        Near.Equal(Math.PI, SwingTwist.Angle(new(0, 1, 0, 0), Vector3d.UnitY)!.Value);
        Near.Equal(Math.PI, SwingTwist.Angle(new(0, -1, 0, 0), Vector3d.UnitY)!.Value);
    }
}
