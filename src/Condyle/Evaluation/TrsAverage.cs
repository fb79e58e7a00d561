namespace Condyle.Evaluation;

/// <summary>The weighted average of channels: translations by their mean, rotations by their spherical average. All have the same scale.</summary>
internal static class TrsAverage
{
    /// <param name="weights">Add up to one.</param>
    public static Trs Of(IReadOnlyList<Trs> each, IReadOnlyList<double> weights)
    {
        var translation = Vector3d.Zero;
        for (var i = 0; i < each.Count; i++)
            translation += each[i].Translation * weights[i];
        return new Trs(translation, SphericalAverage.Of([.. each.Select(one => one.Rotation)], weights), each[0].Scale);
    }
}
