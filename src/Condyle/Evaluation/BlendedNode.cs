using Condyle.Model;

namespace Condyle.Evaluation;

/// <summary>A blend of a lone node: the sources' world frames, averaged in the space of the node's channels.</summary>
/// <remarks>Frames are taken without scale. Not continuous where two sources are half a turn apart (see <see cref="Slerp"/>).</remarks>
internal sealed class BlendedNode(RigBlend blend) : IFrameWriter
{
    private readonly IReadOnlyList<RigNode> sources = [.. blend.Sources.Select(source =>
        source.Node ?? throw new RigGeometryException($"A source of {blend.Title} isn't known."))];

    public RigBlend Blend => blend;

    public Trs ChannelsOf(RigNode node, PoseFrames frames)
    {
        var stand = frames.StandOf(node);
        return AverageIn(stand.Frame, frames) is { } average
            ? frames.Project(node, stand.Inverse() * stand.Frame * average)
            : RestPose.ChannelsOf(node);
    }

    public Affine3d? FrameOf(RigNode node, PoseFrames frames) => AverageIn(Affine3d.Identity, frames);

    private Affine3d? AverageIn(Affine3d space, PoseFrames frames)
    {
        var back = space.Inverse();
        var each = sources.Select(source => back * frames.WorldOf(source).Frame).ToList(); // all of them, so that a loop is found whatever the switches say
        return BlendWeights.Of(blend, frames) is { } weights ? FrameAverage.Of(each, weights) : null;
    }
}
