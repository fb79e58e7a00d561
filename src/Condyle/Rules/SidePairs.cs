using Condyle.Model;
using Condyle.Naming;

namespace Condyle.Rules;

/// <summary>Which node is which one's counterpart on the other side, by their names.</summary>
internal sealed class SidePairs
{
    private readonly Conventions conventions;
    private readonly Dictionary<NodeKind, Dictionary<string, RigNode>> byName = [];
    private readonly HashSet<(NodeKind, string)> twice = [];

    public SidePairs(RigModel model, Conventions conventions)
    {
        this.conventions = conventions;
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

        Pairs = [.. model.Nodes.Where(node => SideOf(node) == Side.Left).Select(left => (left, Right: CounterpartOf(left))).Where(pair => pair.Right is not null)!];
    }

    /// <summary>The nodes that both sides have, in the order of the left.</summary>
    public IReadOnlyList<(RigNode Left, RigNode Right)> Pairs { get; }

    /// <summary>The side that a node's name says; none for one in the middle.</summary>
    public Side? SideOf(RigNode node) => SidedName.Of(node.Name, conventions)?.Side;

    /// <summary>What a node on one side is on the other; none where there is none, or where names don't tell.</summary>
    public RigNode? CounterpartOf(RigNode node) =>
        IsNamedOnce(node) && SidedName.Of(node.Name, conventions) is { } own && Find(node.Kind, own.Counterpart) is { } other && IsNamedOnce(other) && other.Scope == node.Scope ? other : null;

    /// <summary>Whether a node's name, its side apart, has another's in it word for word: <c>turn_elbow_right</c> has that of <c>elbow_left</c>.</summary>
    public bool IsNamedAfter(RigNode node, RigNode other) =>
        WithoutSide(node) is { } whole && WithoutSide(other.Original ?? other) is { Length: > 0 } part && $"_{whole}_".Contains($"_{part}_");

    /// <summary>Where a node would be in the mirror: its counterpart, or itself where it is in the middle.</summary>
    public RigNode? MirrorOf(RigNode node) => node.Name.IsOpen ? null : SideOf(node) is null ? node : CounterpartOf(node);

    /// <summary>Whether there is no node of the kind that could be a node's counterpart.</summary>
    public bool IsAlone(RigNode node) =>
        IsNamedOnce(node) && SidedName.Of(node.Name, conventions) is { } own && Find(node.Kind, own.Counterpart) is null;

    public bool IsNamedOnce(RigNode node) => node.Name.TryKnown(out var name) && (twice.Count == 0 || !twice.Contains((node.Kind, name)));

    private RigNode? Find(NodeKind kind, string name) => byName.TryGetValue(kind, out var ofKind) && ofKind.TryGetValue(name, out var found) ? found : null;

    /// <summary>A text in the mirror: the other side's where it says one.</summary>
    public string? MirrorOf(Text text) => !text.TryKnown(out var known) ? null : SidedName.Of(text, conventions)?.Counterpart ?? known;

    private string? WithoutSide(RigNode node)
    {
        if (SidedName.Of(node.Name, conventions) is not { } sided)
            return null;
        var name = sided.Name.Remove(sided.MarkAt, conventions.MarkOf(sided.Side).Length);
        return node.Kind == NodeKind.Group && name.EndsWith(conventions.GroupSuffix, StringComparison.Ordinal) ? name.Substring(0, name.Length - conventions.GroupSuffix.Length) : name;
    }
}
