using Condyle.Model;
using Condyle.Naming;

namespace Condyle.Rules;

/// <summary>Which node is which one's counterpart on the other side, by their names.</summary>
internal sealed class SidePairs
{
    private readonly Conventions conventions;
    private readonly Dictionary<NodeKind, Dictionary<string, RigNode>> byName = [];
    private readonly HashSet<(NodeKind, string)> twice = [];
    private readonly Dictionary<RigNode, (SidedName Name, RigNode? Counterpart)> sided;

    public SidePairs(RigModel model, Conventions conventions)
    {
        this.conventions = conventions;
        sided = new(model.Nodes.Count);
        foreach (var node in model.Nodes)
        {
            if (node.IsUnknown || !node.Name.TryKnown(out var name))
                continue;
            if (!byName.TryGetValue(node.Kind, out var ofKind))
                byName[node.Kind] = ofKind = new(StringComparer.Ordinal);
            if (ofKind.ContainsKey(name))
                twice.Add((node.Kind, name));
            else
                ofKind.Add(name, node);
        }

        var pairs = new List<(RigNode Left, RigNode Right)>();
        foreach (var node in model.Nodes)
        {
            if (SidedName.Of(node.Name, conventions) is not { } own)
                continue;
            sided[node] = (own, Find(node.Kind, own.Counterpart));
            if (own.Side == Side.Left && CounterpartOf(node) is { } right)
                pairs.Add((node, right));
        }

        Pairs = pairs;
    }

    /// <summary>The nodes that both sides have, in the order of the left.</summary>
    public IReadOnlyList<(RigNode Left, RigNode Right)> Pairs { get; }

    /// <summary>The side that a node's name says; none for one in the middle.</summary>
    public Side? SideOf(RigNode node) => sided.TryGetValue(node, out var own) ? own.Name.Side : null;

    /// <summary>What a node on one side is on the other; none where there is none, or where names don't tell.</summary>
    public RigNode? CounterpartOf(RigNode node) =>
        sided.TryGetValue(node, out var own) && own.Counterpart is { } other && other.Scope == node.Scope && IsNamedOnce(node) && IsNamedOnce(other) ? other : null;

    /// <summary>Whether a node's name, its side apart, has another's in it word for word: <c>turn_elbow_right</c> has that of <c>elbow_left</c>.</summary>
    public bool IsNamedAfter(RigNode node, RigNode other) =>
        WithoutSide(node) is { } whole && WithoutSide(other.Original ?? other) is { Length: > 0 } part && $"_{whole}_".Contains($"_{part}_");

    /// <summary>Where a node would be in the mirror: its counterpart, or itself where it is in the middle.</summary>
    public RigNode? MirrorOf(RigNode node) => node.Name.IsOpen ? null : SideOf(node) is null ? node : CounterpartOf(node);

    /// <summary>Whether there is no node of the kind that could be a node's counterpart.</summary>
    public bool IsAlone(RigNode node) => sided.TryGetValue(node, out var own) && own.Counterpart is null && IsNamedOnce(node);

    public bool IsNamedOnce(RigNode node) => node.Name.TryKnown(out var name) && (twice.Count == 0 || !twice.Contains((node.Kind, name)));

    private RigNode? Find(NodeKind kind, string name) => byName.TryGetValue(kind, out var ofKind) && ofKind.TryGetValue(name, out var found) ? found : null;

    /// <summary>A text in the mirror: the other side's where it says one.</summary>
    public string? MirrorOf(Text text) => !text.TryKnown(out var known) ? null : SidedName.Of(text, conventions)?.Counterpart ?? known;

    private string? WithoutSide(RigNode node)
    {
        if (!sided.TryGetValue(node, out var own))
            return null;
        var name = own.Name.Name.Remove(own.Name.MarkAt, conventions.MarkOf(own.Name.Side).Length);
        return node.Kind == NodeKind.Group && name.EndsWith(conventions.GroupSuffix, StringComparison.Ordinal) ? name.Substring(0, name.Length - conventions.GroupSuffix.Length) : name;
    }
}
