namespace Condyle.Evaluation;

/// <summary>The weighted average of frames: origins by their mean, rotations by their spherical average.</summary>
internal static class FrameAverage
{
    /// <summary>The average of frames without scale.</summary>
    /// <param name="weights">Add up to one.</param>
    public static Affine3d Of(IReadOnlyList<Affine3d> frames, IReadOnlyList<double> weights)
    {
        var origin = Vector3d.Zero;
        for (var i = 0; i < frames.Count; i++)
            origin += frames[i].Origin * weights[i];
        return Affine3d.Rigid(origin, SphericalAverage.Of([.. frames.Select(frame => frame.Rotation)], weights));
    }

    /// <summary>The average of frames with their scale and shear: each one's, as seen in its own <see cref="Affine3d.Frame"/>, by their mean. One with all the weight comes back whole.</summary>
    /// <param name="weights">Not negative; add up to one.</param>
    public static Affine3d OfWhole(IReadOnlyList<Affine3d> frames, IReadOnlyList<double> weights)
    {
        var counted = Enumerable.Range(0, frames.Count).Where(i => weights[i] > 0).ToList();
        if (counted.Count == 1)
            return frames[counted[0]];
        var (x, y, z) = (Vector3d.Zero, Vector3d.Zero, Vector3d.Zero);
        foreach (var i in counted)
        {
            var back = frames[i].Rotation.Inverse;
            x += back.Rotate(frames[i].X) * weights[i];
            y += back.Rotate(frames[i].Y) * weights[i];
            z += back.Rotate(frames[i].Z) * weights[i];
        }

        return Of(frames, weights) * new Affine3d(x, y, z, Vector3d.Zero);
    }
}
