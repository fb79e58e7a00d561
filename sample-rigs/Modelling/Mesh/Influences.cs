using Modelling.Anatomy;

namespace Modelling.Mesh;

/// <summary>Which joints a vertex follows, by weights that add up to one.</summary>
public sealed class Influences
{
    private readonly List<(ModelJoint Joint, double Weight)> _weights;

    private Influences(List<(ModelJoint, double)> weights) => _weights = weights;

    public IReadOnlyList<(ModelJoint Joint, double Weight)> Weights => _weights;

    public static Influences Of(ModelJoint joint) => new([(joint, 1)]);

    public static double Smooth(double value, double from, double to)
    {
        var part = Math.Clamp((value - from) / (to - from), 0, 1);
        return part * part * (3 - 2 * part);
    }

    /// <summary>Gives a share to one more joint; the others keep their proportions.</summary>
    public Influences With(ModelJoint joint, double share)
    {
        if (share <= 0)
            return this;
        var kept = _weights.Select(old => (old.Joint, Weight: old.Weight * (1 - share))).Where(old => old.Weight > 0).ToList();
        var at = kept.FindIndex(old => old.Joint == joint);
        if (at < 0)
            kept.Add((joint, share));
        else
            kept[at] = (joint, kept[at].Weight + share);
        return new Influences(kept);
    }

    public Influences Mirrored(JointTree joints) => new([.. _weights.Select(old => (joints.Mirror(old.Joint), old.Weight))]);
}
