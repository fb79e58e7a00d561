using Condyle.Model;

namespace Condyle.Evaluation;

/// <summary>What a rig's sentences write, worked out once for all its poses. It never changes.</summary>
internal sealed class RigSentences(RigModel model, RestPose rest)
{
    public RestPose Rest => rest;

    public IReadOnlyList<RigNode> Nodes => model.Nodes;

    public RigWriters Writers { get; } = RigWriters.Of(model, rest);

    public RigFalloffs Falloffs { get; } = RigFalloffs.Of(model, rest);

    public RigResponses Responses { get; } = RigResponses.Of(model);

    /// <summary>The switches and options, by id.</summary>
    public IReadOnlyDictionary<int, RigElement> Variables { get; } = model.Switches.Concat<RigElement>(model.Options).ToDictionary(given => given.Id);
}
