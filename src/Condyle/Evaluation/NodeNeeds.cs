using Condyle.Model;

namespace Condyle.Evaluation;

/// <summary>Which nodes had to be worked out for which others: what carries them, and what drives them.</summary>
internal sealed class NodeNeeds
{
    private readonly Dictionary<int, List<RigNode>> needed = [];

    public void Add(RigNode node, RigNode needs)
    {
        if (!needed.TryGetValue(node.Id, out var nodes))
            needed[node.Id] = nodes = [];
        nodes.Add(needs);
    }

    public IReadOnlyList<RigNode> Of(RigNode node) => needed.TryGetValue(node.Id, out var nodes) ? nodes : [];
}
