using System.Numerics;
using Condyle.Evaluation;
using CsCheck;

namespace Condyle.Tests.Evaluation;

public sealed class QuaterniondTests
{
    [Fact]
    public void Products_and_turned_vectors_agree_with_the_framework() =>
        Gen.Select(Any.Rotation, Any.Rotation, Any.Vector).Sample((a, b, v) =>
        {
            Near.Equal(a.ToSingle() * b.ToSingle(), a * b, 1e-5);
            Near.Equal(Vector3.Transform(v.ToSingle(), a.ToSingle()), a.Rotate(v), 1e-5);
        });

    [Fact]
    public void A_rotation_comes_back_from_its_axes() =>
        Any.Rotation.Sample(q => Near.Equal(q, Quaterniond.FromAxes(q.Rotate(Vector3d.UnitX), q.Rotate(Vector3d.UnitY), q.Rotate(Vector3d.UnitZ))));

    [Theory]
    [InlineData(1, 0, 0)]
    [InlineData(0, 1, 0)]
    [InlineData(0, 0, 1)]
    public void Half_turns_come_back_from_their_axes(double x, double y, double z)
    {
        var q = new Quaterniond(x, y, z, 0);

        Near.Equal(q, Quaterniond.FromAxes(q.Rotate(Vector3d.UnitX), q.Rotate(Vector3d.UnitY), q.Rotate(Vector3d.UnitZ)));
    }

    [Fact]
    public void The_smallest_turn_between_two_directions_is_across_both() =>
        Gen.Select(Any.Direction, Any.Direction).Sample((from, to) =>
        {
            var turn = Quaterniond.Between(from, to, from.AnyAcross());
            Near.Equal(to, turn.Rotate(from), 1e-7); // near opposite directions, half of the digits are left
            Near.Equal(0, Vector3d.Dot(turn.Vector, from), 1e-7);
        });

    [Fact]
    public void Opposite_directions_are_half_a_turn_apart_about_the_axis_that_is_given() =>
        Near.Equal(Quaterniond.About(Vector3d.UnitZ, Math.PI), Quaterniond.Between(Vector3d.UnitX, -Vector3d.UnitX, Vector3d.UnitZ));
}
