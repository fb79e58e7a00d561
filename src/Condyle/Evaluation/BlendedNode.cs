using Condyle.Model;

namespace Condyle.Evaluation;

/// <summary>A blend of a lone node: the sources' world frames, brought into the space of its channels, and averaged there.</summary>
internal sealed class BlendedNode(RigBlend blend) : IChannelWriter
{
    private readonly IReadOnlyList<RigNode> sources = [.. blend.Sources.Select(source =>
        source.Node ?? throw new RigGeometryException($"A source of {blend.Title} isn't known."))];

    public Trs ChannelsOf(RigNode node, PoseFrames frames)
    {
        var back = frames.StandOf(node).Inverse();
        var locals = sources.Select(source => frames.Project(node, back * frames.WorldOf(source))).ToList();
        return BlendWeights.Of(blend, frames) is { } weights ? TrsAverage.Of(locals, weights) : RestPose.ChannelsOf(node);
    }
}
