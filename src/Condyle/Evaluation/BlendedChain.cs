using Condyle.Model;

namespace Condyle.Evaluation;

/// <summary>
/// A blend of a chain from its copies. The first joint blends the copies' world frames in its own parent's space. Each later joint blends
/// where it stands in the previous joint of its copy, and that average, taken from the previous joint of the chain, is brought into
/// its real parent's space: bones keep their length halfway, and joints between (twists) don't matter.
/// </summary>
/// <remarks>
/// Frames are taken without scale, as metres in the world: a skeleton under a scale and its copies beside it then mean the same bone. Joints that a source doesn't copy are left alone.
/// Not continuous where two sources of a joint are half a turn apart (see <see cref="Slerp"/>).
/// </remarks>
internal sealed class BlendedChain : IFrameWriter
{
    private readonly RigBlend blend;
    private readonly RigNode[][] sources;
    private readonly Dictionary<int, int> order = [];

    public BlendedChain(RigBlend blend)
    {
        this.blend = blend;
        var joints = blend.Chain?.Joints ?? throw new RigGeometryException($"The joints of {blend.Title} aren't known.");
        var copies = blend.Sources.ConvertAll(source => source.Copy is { IsUnknown: false } copy
            ? copy.Joints.ToDictionary(joint => joint.Original!.Id)
            : throw new RigGeometryException($"A source of {blend.Title} isn't known."));
        Joints = [.. joints.Where(joint => copies.TrueForAll(copy => copy.ContainsKey(joint.Id)))];
        sources = [.. copies.Select(copy => Joints.Select(joint => copy[joint.Id]).ToArray())];
        for (var at = 0; at < Joints.Count; at++)
            order[Joints[at].Id] = at;
    }

    public RigBlend Blend => blend;

    /// <summary>The joints that it writes: those that every source copies.</summary>
    public IReadOnlyList<RigNode> Joints { get; }

    public Trs ChannelsOf(RigNode joint, PoseFrames frames)
    {
        var stand = frames.StandOf(joint);
        var at = order[joint.Id];
        return FrameFrom(at == 0 ? stand : null, at, frames) is { } frame
            ? frames.Project(joint, stand.Inverse() * frame)
            : RestPose.ChannelsOf(joint);
    }

    public Affine3d? FrameOf(RigNode joint, PoseFrames frames) => order[joint.Id] is var at && at == 0 ? FrameFrom(Affine3d.Identity, 0, frames) : FrameFrom(null, at, frames);

    /// <param name="space">In which the first joint is averaged; none for the later ones, which have the joint before.</param>
    private Affine3d? FrameFrom(Affine3d? space, int at, PoseFrames frames)
    {
        var from = (space ?? frames.WorldOf(Joints[at - 1])).Frame;
        // All of them are asked, so that a loop is found whatever the switches say.
        foreach (var source in sources)
        {
            if (at > 0)
                frames.WorldOf(source[at - 1]);
            frames.WorldOf(source[at]);
        }

        if (frames.Once(this, pose => new WeightsInPose(BlendWeights.Of(blend, pose))).Weights is not { } weights)
            return null;
        for (var i = 0; i < weights.Count; i++)
        {
            if (weights[i] == 1)
                return from * InPrevious(i);
        }

        return from * FrameAverage.Of([.. weights.Select((_, i) => InPrevious(i))], weights);

        Affine3d InPrevious(int source)
        {
            var start = at == 0 ? from : frames.WorldOf(sources[source][at - 1]).Frame;
            return start.Inverse() * frames.WorldOf(sources[source][at]).Frame;
        }
    }

    /// <summary>The weights of the sources in a pose; none where nobody has the chain.</summary>
    private sealed record WeightsInPose(IReadOnlyList<double>? Weights);
}
