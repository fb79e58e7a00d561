using Condyle.Evaluation;

namespace Condyle.Rules;

/// <summary>Two rest frames that stand opposite each other.</summary>
internal static class MirroredFrames
{
    /// <summary>How far, in shares of the distance between them, two frames may be from each other's mirror image.</summary>
    private const double Tolerance = 0.02;

    public static bool AreOpposite(Affine3d left, Affine3d right) =>
        (left.Origin - new Vector3d(-right.Origin.X, right.Origin.Y, right.Origin.Z)).Length <= Tolerance * (left.Origin - right.Origin).Length;
}
