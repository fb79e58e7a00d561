using System.Numerics;
using Condyle.Evaluation;
using CsCheck;

namespace Condyle.Tests.Evaluation;

public sealed class SlerpTests
{
    [Fact]
    public void It_agrees_with_the_framework() =>
        Gen.Select(Any.Rotation, Any.Rotation, Gen.Double[0, 1]).Where((a, b, _) => Math.Abs(Quaterniond.Dot(a, b)) > 0.01).Sample((a, b, t) =>
            Near.Equal(Quaternion.Slerp(a.ToSingle(), b.ToSingle(), (float)t), Slerp.Between(a, b, t), 1e-5));

    [Fact]
    public void About_one_axis_the_angle_goes_evenly_along_the_shorter_arc() =>
        Gen.Select(Any.Direction, Gen.Double[-3, 3], Gen.Double[-3.1, 3.1], Gen.Double[0, 1]).Sample((axis, from, turn, t) =>
            Near.Equal(
                Quaterniond.About(axis, from + (turn * t)),
                Slerp.Between(Quaterniond.About(axis, from), Quaterniond.About(axis, from + turn), t)));

    [Fact]
    public void The_ends_are_the_rotations_themselves_whatever_their_sign() =>
        Gen.Select(Any.Rotation, Any.Rotation).Sample((a, b) =>
        {
            Near.Equal(a, Slerp.Between(a, -b, 0));
            Near.Equal(b, Slerp.Between(a, -b, 1));
        });

    [Fact]
    public void Half_a_turn_apart_it_takes_the_arc_of_the_signs_as_given()
    {
        var (none, half) = (Quaterniond.Identity, new Quaterniond(1, 0, 0, 0));

        Near.Equal(Quaterniond.About(Vector3d.UnitX, Math.PI / 2), Slerp.Between(none, half, 0.5));
        Near.Equal(Quaterniond.About(Vector3d.UnitX, -Math.PI / 2), Slerp.Between(none, -half, 0.5));
    }

    [Fact]
    public void Tiny_angles_keep_their_share()
    {
        var to = Quaterniond.About(Vector3d.UnitY, 1e-10);

        Near.Equal(0.25e-10, Quaterniond.Angle(Quaterniond.Identity, Slerp.Between(Quaterniond.Identity, to, 0.25)), 1e-20);
    }
}
