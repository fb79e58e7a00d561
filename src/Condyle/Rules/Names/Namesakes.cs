using Condyle.Model;

namespace Condyle.Rules;

/// <summary>A node that is called as one before it is.</summary>
internal sealed record Namesakes(RigNode Node, RigNode Other)
{
    // One of each kind is enough to know.
    private const int MostOfOneName = 8;

    /// <summary>Whether both are of a kind that clips and games find by name.</summary>
    public bool AreFoundByName => Node.Kind == Other.Kind && Node.Kind is NodeKind.Control or NodeKind.Joint;

    /// <summary>How much was said between them: the same for all that code makes which runs a second time.</summary>
    public int Distance => Node.Id - Other.Id;

    public static IEnumerable<Namesakes> In(CheckedRig rig)
    {
        var model = rig.Model;
        var first = new Dictionary<string, RigNode>(model.Nodes.Count, StringComparer.Ordinal);
        var several = new Dictionary<string, List<RigNode>>(StringComparer.Ordinal);
        var told = new HashSet<(string Name, PlaceId Place)>();
        foreach (var node in model.Nodes)
        {
            if (node.IsUnknown || !node.Name.TryKnown(out var name))
                continue;
            if (!first.TryGetValue(name, out var only))
            {
                first.Add(name, node);
                continue;
            }

            if (!several.TryGetValue(name, out var others))
                several.Add(name, others = [only]);
            if ((others.Find(other => other.Kind == node.Kind) ?? others[0]) is { } before && BothExist(node, before) && told.Add((name, node.Place))) // a loop says it once
                yield return new(node, before);
            if (others.Count < MostOfOneName)
                others.Add(node);
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
