using Condyle.Model;

namespace Condyle.Evaluation;

/// <summary>
/// The weights of a blend's sources at the switches' values: those below zero count as zero, and the rest is divided by its sum.
/// Where all are zero nobody has the target, and it stays at rest. That is the one place where a blend isn't continuous for its weights.
/// </summary>
internal static class BlendWeights
{
    /// <summary>A sum below this is no weight at all: it is what a float's rounding leaves of weights that cancel.</summary>
    public const double None = 1e-6;

    public static double[]? Of(RigBlend blend, PoseFrames frames)
    {
        var weights = new double[blend.Sources.Count];
        var sum = 0.0;
        for (var i = 0; i < weights.Length; i++)
        {
            var source = blend.Sources[i];
            weights[i] = source.Weight.TryKnown(out var weight)
                ? Math.Max(0, frames.ValueOf(weight))
                : throw new RigGeometryException($"The weight of {source.Title} in {blend.Title} isn't known.");
            sum += weights[i];
        }

        if (sum < None)
            return null;
        for (var i = 0; i < weights.Length; i++)
            weights[i] /= sum;
        return weights;
    }
}
