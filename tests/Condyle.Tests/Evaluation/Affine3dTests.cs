using System.Numerics;
using Condyle.Evaluation;
using CsCheck;
using MathNet.Numerics.LinearAlgebra;

namespace Condyle.Tests.Evaluation;

public sealed class Affine3dTests
{
    [Fact]
    public void Channels_and_products_agree_with_the_frameworks_row_vector_matrices() =>
        Gen.Select(Any.Channels, Any.Channels, Any.Vector).Sample((a, b, point) =>
        {
            var matrix = Matrix(b) * Matrix(a); // row vectors: what is applied first stands first
            Near.Equal(Vector3.Transform(point.ToSingle(), matrix), (a.ToAffine() * b.ToAffine()).Apply(point), 1e-4);
        });

    [Fact]
    public void The_inverse_agrees_with_a_general_linear_solver() =>
        Gen.Select(Any.Sheared, Any.Vector).Where((frame, _) => Math.Abs(frame.Determinant) > 0.05).Sample((frame, point) =>
        {
            var matrix = Matrix<double>.Build.DenseOfColumnArrays([frame.X.X, frame.X.Y, frame.X.Z], [frame.Y.X, frame.Y.Y, frame.Y.Z], [frame.Z.X, frame.Z.Y, frame.Z.Z]);
            var away = point - frame.Origin;
            var back = matrix.Solve(CreateVector.Dense([away.X, away.Y, away.Z]));
            Near.Equal(new Vector3d(back[0], back[1], back[2]), frame.Inverse().Apply(point), 1e-8);
        });

    [Fact]
    public void A_frame_brought_through_a_sheared_parent_and_back_is_the_same_frame() =>
        Gen.Select(Any.Sheared, Any.Sheared).Where((a, b) => Math.Abs(a.Determinant) > 0.05 && Math.Abs(b.Determinant) > 0.05).Sample((parent, frame) =>
            Near.Equal(frame.Frame.Rotation, (parent * Affine3d.Rigid(Vector3d.Zero, (parent.Inverse() * frame).Rotation)).Rotation, 1e-7));

    [Fact]
    public void Channels_come_back_whole_with_the_signs_of_their_scale() =>
        Gen.Select(Any.Channels, Gen.Bool, Gen.Bool, Gen.Bool).Sample((channels, x, y, z) =>
        {
            var signed = channels with { Scale = new(channels.Scale.X * (x ? -1 : 1), channels.Scale.Y * (y ? -1 : 1), channels.Scale.Z * (z ? -1 : 1)) };
            Near.Equal(signed, signed.ToAffine().ToTrs(signed.Scale));
            Near.Equal(signed.ToAffine(), signed.ToAffine().ToTrs(Vector3d.One).ToAffine());
        });

    [Theory]
    [InlineData(0, 1, 1)]
    [InlineData(1, 0, 1)]
    [InlineData(1, 1, 0)]
    [InlineData(0, 0, 0)]
    [InlineData(1e-300, 1, 1)]
    public void A_flat_frame_gives_finite_answers(double x, double y, double z)
    {
        var flat = new Trs(new(1, 2, 3), Quaterniond.About(Vector3d.UnitY, 0.3), new(x, y, z)).ToAffine();

        Near.Finite(flat.Inverse());
        Near.Finite(flat.Frame);
        Near.Equal(1, flat.Rotation.Length);
    }

    private static Matrix4x4 Matrix(Trs channels) =>
        Matrix4x4.CreateScale(channels.Scale.ToSingle()) * Matrix4x4.CreateFromQuaternion(channels.Rotation.ToSingle()) * Matrix4x4.CreateTranslation(channels.Translation.ToSingle());
}
