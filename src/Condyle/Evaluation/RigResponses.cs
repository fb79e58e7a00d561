using Condyle.Model;

namespace Condyle.Evaluation;

/// <summary>A curve and what it is a curve of: a switch, a dial or a measured angle.</summary>
internal sealed record ResponseTerm(RigElement Source, ResponseCurve Curve)
{
    /// <summary>The curve's value while everything is at rest.</summary>
    public double AtRest => Curve.At(Pose.RestOf(Source));

    public double At(PoseFrames frames) => Curve.At(frames.ValueOf(Source));
}

/// <summary>A morph target and the responses that set it: its weight is the sum of their curves.</summary>
internal sealed record MorphResponses(MorphName Name, List<ResponseTerm> Terms)
{
    public double WeightIn(PoseFrames frames) => Terms.Sum(term => term.At(frames));
}

/// <summary>All responses of a rig, by what they set. A response without keys or targets is unfinished and sets nothing.</summary>
internal sealed class RigResponses
{
    private readonly Dictionary<int, ChannelResponses> channels = [];
    private readonly Dictionary<MorphName, MorphResponses> morphs = [];

    private RigResponses()
    {
    }

    /// <summary>The morph targets in the order in which they were first named.</summary>
    public List<MorphResponses> Morphs { get; } = [];

    public IReadOnlyCollection<ChannelResponses> Channels => channels.Values;

    public ChannelResponses? On(RigNode node) => channels.TryGetValue(node.Id, out var found) ? found : null;

    /// <exception cref="RigGeometryException">Something isn't known, or a curve has two keys at one value.</exception>
    public static RigResponses Of(RigModel model)
    {
        var responses = new RigResponses();
        foreach (var response in model.Responses)
            responses.Add(response);
        return responses;
    }

    private void Add(RigResponse response)
    {
        if (response.TargetsAreOpen)
            throw new RigGeometryException($"What {response.Title} sets isn't known.");
        if (response.Keys.Count == 0 && !response.KeysAreOpen)
            return;
        var term = new ResponseTerm(response.Source ?? throw new RigGeometryException($"What {response.Title} responds to isn't known."), ResponseCurve.Of(response));
        foreach (var target in response.Targets)
        {
            if (target.Way == ResponseWay.Morph)
                MorphOf(target.Morph, response).Add(term);
            else
                ChannelsOf(target.Node, response).Add(term, target.Way, Facts.Known(target.Axis, $"An axis of {response.Title}"));
        }
    }

    private List<ResponseTerm> MorphOf(MorphName name, RigResponse response)
    {
        if (!morphs.TryGetValue(name, out var found))
        {
            Facts.Known(name.Mesh, $"The mesh of {response.Title}");
            Facts.Known(name.Target, $"The morph target of {response.Title}");
            morphs[name] = found = new(name, []);
            Morphs.Add(found);
        }

        return found.Terms;
    }

    private ChannelResponses ChannelsOf(RigNode? node, RigResponse response)
    {
        if (node is not { IsUnknown: false })
            throw new RigGeometryException($"A node of {response.Title} isn't known.");
        if (!channels.TryGetValue(node.Id, out var found))
            channels[node.Id] = found = new(node);
        return found;
    }
}
