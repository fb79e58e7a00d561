using Condyle.Evaluation;

namespace Condyle.Tests.Evaluation;

/// <summary>Assertions within a tolerance.</summary>
internal static class Near
{
    public const double Tolerance = 1e-9;

    public static void Equal(Vector3d expected, Vector3d actual, double tolerance = Tolerance) =>
        Assert.True((expected - actual).Length <= tolerance, $"Expected {expected}, found {actual}: {(expected - actual).Length} apart.");

    /// <summary>The same rotation; opposite quaternions are.</summary>
    public static void Equal(Quaterniond expected, Quaterniond actual, double tolerance = Tolerance) =>
        Assert.True(Quaterniond.Angle(expected, actual) <= tolerance, $"Expected {expected}, found {actual}: {Quaterniond.Angle(expected, actual)} radians apart.");

    public static void Equal(Affine3d expected, Affine3d actual, double tolerance = Tolerance)
    {
        Equal(expected.Origin, actual.Origin, tolerance);
        Equal(expected.X, actual.X, tolerance);
        Equal(expected.Y, actual.Y, tolerance);
        Equal(expected.Z, actual.Z, tolerance);
    }

    public static void Equal(Trs expected, Trs actual, double tolerance = Tolerance)
    {
        Equal(expected.Translation, actual.Translation, tolerance);
        Equal(expected.Rotation, actual.Rotation, tolerance);
        Equal(expected.Scale, actual.Scale, tolerance);
    }

    public static void Equal(double expected, double actual, double tolerance = Tolerance) =>
        Assert.True(Math.Abs(expected - actual) <= tolerance, $"Expected {expected}, found {actual}.");

    public static void Finite(Affine3d frame) =>
        Assert.True(double.IsFinite(frame.X.Length + frame.Y.Length + frame.Z.Length + frame.Origin.Length), $"{frame} is not finite.");
}
