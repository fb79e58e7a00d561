using Condyle.Model;
using Condyle.Naming;

namespace Condyle.Rules;

/// <summary>The nodes of a rig by kind and name, to find each one's counterpart on the other side.</summary>
internal sealed class SidedNodes
{
    private readonly Conventions conventions;
    private readonly Dictionary<(NodeKind, string), RigNode?> byName = [];

    public SidedNodes(RigModel model, Conventions conventions)
    {
        this.conventions = conventions;
        foreach (var node in model.Nodes)
        {
            // A name that two have says nothing.
            if (!node.IsUnknown && node.Name.TryKnown(out var name))
                byName[(node.Kind, name)] = byName.ContainsKey((node.Kind, name)) ? null : node;
        }
    }

    public RigNode? CounterpartOf(RigNode node) =>
        SidedName.Of(node.Name, conventions) is { } own && byName.TryGetValue((node.Kind, own.Counterpart), out var other) && other?.Scope == node.Scope ? other : null;

    /// <summary>Whether a node's name, its side apart, has another's in it word for word: <c>turn_elbow_right</c> has that of <c>elbow_left</c>.</summary>
    public bool IsNamedAfter(RigNode node, RigNode other) =>
        WithoutSide(node) is { } whole && WithoutSide(other.Original ?? other) is { Length: > 0 } part && $"_{whole}_".Contains($"_{part}_");

    private string? WithoutSide(RigNode node)
    {
        if (SidedName.Of(node.Name, conventions) is not { } sided)
            return null;
        var name = sided.Name.Remove(sided.MarkAt, conventions.MarkOf(sided.Side).Length);
        return node.Kind == NodeKind.Group && name.EndsWith(conventions.GroupSuffix, StringComparison.Ordinal) ? name.Substring(0, name.Length - conventions.GroupSuffix.Length) : name;
    }
}
