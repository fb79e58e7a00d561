using Condyle.Evaluation;
using Condyle.Model;

namespace Condyle.Runtime.Compilation;

/// <summary>A node that a control rides by a weight, with the control's place in it at rest; no node is the world.</summary>
internal sealed record SpaceInput(PlannedNode? Node, Affine3d Offset, WeightPolynomial Weight)
{
    public Anchor Source => Node is null ? new Anchor(null, Offset) : Node.World.Below(Offset);
}

/// <summary>What carries a control that rides one of several nodes. It writes a frame and no channels.</summary>
internal sealed class SpaceWriter(IReadOnlyList<SpaceInput> sources) : Writer
{
    public IReadOnlyList<SpaceInput> Sources => sources;

    /// <summary>Its frames come with the scale of what they stand in.</summary>
    public override bool WritesScale => !sources.All(source => source.Source.IsRigid);

    public override IEnumerable<PlannedNode> ReadsFramesOf => WritesScale ? [] : Reads;

    public override IEnumerable<PlannedNode> ReadsAxesOf => WritesScale ? Reads : [];

    public override IEnumerable<PlannedNode> Inputs => Those(sources.Select(source => source.Node));

    public override IEnumerable<PlannedNode> Reads => Those(sources.Select(source => source.Source.Root));
}
