using Condyle.Model;

namespace Condyle.Rules;

/// <summary>What nodes of a rig are for: which carry or lead others, and what stands at joints and copies them.</summary>
internal sealed class NodeUse
{
    private readonly HashSet<int> used = [];
    private readonly HashSet<int> copied = [];
    private readonly Dictionary<int, RigNode> controlAt = [];

    public NodeUse(RigModel model, Moves moves)
    {
        foreach (var node in model.Nodes)
        {
            if (node.Parent.TryKnown(out var parent) && parent is not null)
                used.Add(parent.Id);
            if (node.Original is { } original)
                copied.Add(original.Id);
            if (node.Kind == NodeKind.Control && node.Placement.TryKnown(out var placement) && placement is AtNode at)
                controlAt[at.Target.Id] = node;
            used.UnionWith(moves.Of(node).SelectMany(move => move.Leaders).Select(leader => leader.Node?.Id ?? -1));
        }
    }

    public bool IsCopied(RigNode joint) => copied.Contains(joint.Id);

    public bool HasControl(RigNode joint) => controlAt.ContainsKey(joint.Id);

    /// <summary>Whether a control stands at the joint that does nothing: that it doesn't is another rule's finding.</summary>
    public bool IsLeftToItsControl(RigNode joint) => controlAt.TryGetValue(joint.Id, out var control) && !used.Contains(control.Id);
}
