using Condyle.Model;

namespace Condyle.Evaluation;

/// <summary>Which nodes had to be worked out for which others: what carries them, and what drives them.</summary>
internal sealed class NodeNeeds
{
    private readonly List<(int Node, RigNode Needs)> noted = [];
    private ILookup<int, RigNode>? byNode;

    public void Add(RigNode node, RigNode needs) => noted.Add((node.Id, needs));

    /// <summary>What was noted of a node until anybody asked first: few do, so it is only sorted then.</summary>
    public IEnumerable<RigNode> Of(RigNode node) => (byNode ??= noted.ToLookup(need => need.Node, need => need.Needs))[node.Id];
}
