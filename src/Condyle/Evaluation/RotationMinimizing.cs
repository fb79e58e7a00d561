namespace Condyle.Evaluation;

/// <summary>Carries a direction across a curve along it without turning it about the curve.</summary>
/// <remarks>
/// Double reflection (Wang, Jüttler, Zheng and Liu 2008, "Computation of rotation minimizing frames", ACM TOG 27(1), section 4): the plane halfway between two points
/// mirrors the first frame, and a second mirror brings its tangent onto the second one. The error over a curve goes with the fourth power of the step.
/// Where the step doesn't go along the curve, as between two points that differ by rounding or at a cusp, the mirrors say nothing: the smallest turn of the tangent carries.
/// </remarks>
internal static class RotationMinimizing
{
    /// <summary>A step goes along the curve when its cosines with the two tangents add up to this.</summary>
    public const double Along = 0.5;

    /// <param name="step">From the first point to the second.</param>
    /// <param name="along">The tangent at the first point, of length one.</param>
    /// <param name="across">A direction across it, of length one.</param>
    /// <param name="alongNext">The tangent at the second point, of length one.</param>
    /// <returns>The direction across the curve at the second point.</returns>
    public static Vector3d Carry(Vector3d step, Vector3d along, Vector3d across, Vector3d alongNext)
    {
        if (step.Direction is not { } halfway || Vector3d.Dot(halfway, along + alongNext) < Along)
            return Square(Quaterniond.Between(along, alongNext, across).Rotate(across), alongNext);
        var (mirroredAcross, mirroredAlong) = (Mirror(across, halfway), Mirror(along, halfway));
        var carried = (alongNext - mirroredAlong).Direction is { } second ? Mirror(mirroredAcross, second) : mirroredAcross;
        return Square(carried, alongNext);
    }

    private static Vector3d Mirror(Vector3d v, Vector3d normal) => v - (normal * (2 * Vector3d.Dot(v, normal)));

    // Takes out what rounding left along the curve.
    private static Vector3d Square(Vector3d across, Vector3d along) => across.Across(along).Direction ?? along.AnyAcross();
}
