using Condyle.Model;

namespace Condyle.Evaluation;

/// <summary>A rig in a pose: where every node stands, what the engine reads, and which labels show.</summary>
internal sealed class ReferencePose(
    IReadOnlyDictionary<int, Affine3d> worlds,
    IReadOnlyDictionary<int, Trs> joints,
    IReadOnlyDictionary<int, double> shears,
    IReadOnlyDictionary<int, bool> labels,
    IReadOnlyDictionary<MorphName, double> morphs)
{
    public Affine3d WorldOf(RigNode node) => worlds[node.Id];

    /// <summary>The translation, rotation and scale of an exported joint in its parent's space.</summary>
    public Trs ChannelsOf(RigNode joint) => joints[joint.Id];

    /// <summary>The shear that the node's translation, rotation and scale couldn't hold, as <see cref="Affine3d.Shear"/>; 0 where nothing was lost.</summary>
    public double ShearLostBy(RigNode node) => shears.TryGetValue(node.Id, out var shear) ? shear : 0;

    /// <summary>The weight of a morph target that some response sets.</summary>
    public double MorphWeight(string mesh, string target) => morphs[new(mesh, target)];

    public bool IsVisible(RigLabel label) => labels[label.Id];
}
