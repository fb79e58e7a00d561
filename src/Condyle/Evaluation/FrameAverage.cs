namespace Condyle.Evaluation;

/// <summary>The weighted average of frames without scale: origins by their mean, rotations by their spherical average.</summary>
internal static class FrameAverage
{
    /// <param name="weights">Add up to one.</param>
    public static Affine3d Of(IReadOnlyList<Affine3d> frames, IReadOnlyList<double> weights)
    {
        var origin = Vector3d.Zero;
        for (var i = 0; i < frames.Count; i++)
            origin += frames[i].Origin * weights[i];
        return Affine3d.Rigid(origin, SphericalAverage.Of([.. frames.Select(frame => frame.Rotation)], weights));
    }
}
