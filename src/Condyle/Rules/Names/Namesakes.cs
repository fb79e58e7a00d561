using Condyle.Model;

namespace Condyle.Rules;

/// <summary>A node that is called as one before it is.</summary>
/// <param name="Node">The node.</param>
/// <param name="Other">The first one that is called so: of its own kind, if there is any.</param>
/// <param name="Before">The last one of its own kind, if there is any.</param>
/// <param name="IsToldElsewhere">Whether the same sentence made one before: a loop says it once.</param>
internal sealed record Namesakes(RigNode Node, RigNode Other, RigNode Before, bool IsToldElsewhere)
{
    /// <summary>Whether both are of a kind that clips and games find by name.</summary>
    public bool AreFoundByName => Node.Kind == Other.Kind && Node.Kind is NodeKind.Control or NodeKind.Joint;

    public static IEnumerable<Namesakes> In(CheckedRig rig)
    {
        var first = new Dictionary<string, RigNode>(rig.Model.Nodes.Count, StringComparer.Ordinal);
        var several = new Dictionary<string, List<(RigNode First, RigNode Last)>>(StringComparer.Ordinal);
        var told = new HashSet<(string Name, PlaceId Place)>();
        foreach (var node in rig.Model.Nodes)
        {
            if (node.IsUnknown || !node.Name.TryKnown(out var name))
                continue;
            if (!first.TryGetValue(name, out var only))
            {
                first.Add(name, node);
                continue;
            }

            if (!several.TryGetValue(name, out var ofKinds))
                several.Add(name, ofKinds = [(only, only)]);
            var at = ofKinds.FindIndex(others => others.First.Kind == node.Kind);
            var (other, before) = ofKinds[Math.Max(at, 0)];
            if (BothExist(node, other))
                yield return new(node, other, before, !told.Add((name, node.Place)));
            if (at < 0)
                ofKinds.Add((node, node));
            else
                ofKinds[at] = (other, node);
        }
    }

    public static string KindOf(RigNode node) => node.Kind switch
    {
        NodeKind.Joint => "joint",
        NodeKind.CopyJoint => "copied joint",
        NodeKind.Control => "control",
        NodeKind.Group => "group",
        _ => "node",
    };

    // Of what stands in two stretches of code that may not run, perhaps only one does.
    public static bool BothExist(RigElement one, RigElement other) => one.Scope == other.Scope || one.Scope == 0 || other.Scope == 0;
}
