using Condyle.Model;
using Condyle.Naming;

namespace Condyle.Rules;

/// <summary>CDY1002: two controls can't have one name, nor two joints or two groups, since clips, code and files find them by it.</summary>
internal sealed class NameTwice : Rule
{
    public override string Id => "CDY1002";

    public override string Title => "Two nodes with one name";

    public override Severity Severity => Severity.Error;

    public override IEnumerable<Finding> Check(RigModel model, Conventions conventions)
    {
        var told = new HashSet<RigElement>();
        foreach (var (node, other) in NamesakesIn(model).Where(pair => pair.Node.Kind == pair.Other.Kind))
        {
            if (told.Add(node.Copy ?? (RigElement)node)) // a chain that is copied twice is one slip
                yield return new Finding(this, node.Copy ?? (RigElement)node, MessageOf(node), node.Place) { ActsOn = node, Related = [other.Place] };
        }
    }

    /// <summary>The nodes whose name a node before them has, with that one.</summary>
    public static IEnumerable<(RigNode Node, RigNode Other)> NamesakesIn(RigModel model)
    {
        var first = new Dictionary<string, List<RigNode>>(StringComparer.Ordinal);
        foreach (var node in model.Nodes)
        {
            if (node.IsUnknown || !node.Name.TryKnown(out var name))
                continue;
            if (!first.TryGetValue(name, out var others))
                first.Add(name, others = []);
            if ((others.Find(other => other.Kind == node.Kind) ?? others.FirstOrDefault()) is { } before && BothExist(node, before))
                yield return (node, before);
            if (others.Count < MostOfOneName)
                others.Add(node);
        }
    }

    public static string KindOf(RigNode node) => node.Kind switch
    {
        NodeKind.Joint => "exported joint",
        NodeKind.CopyJoint => "copied joint",
        NodeKind.Control => "control",
        NodeKind.Group => "group",
        _ => "node",
    };

    // One of each kind is enough to know.
    private const int MostOfOneName = 8;

    // Of what stands in two stretches of code that may not run, perhaps only one does.
    private static bool BothExist(RigNode one, RigNode other) => one.Scope == other.Scope || one.Scope == 0 || other.Scope == 0;

    private static string MessageOf(RigNode node) => node.Copy is { } copy
        ? $"The joints of {copy.Title} are called as those of another copy are, such as {node.Title}: nobody can tell them apart by their names. Give each copy a tag of its own."
        : $"There is a{(node.Kind == NodeKind.Joint ? "n" : "")} {KindOf(node)} called {node.Title} already: a clip that moves one by its name can't tell which, so the rig can't be played. Give this one a name of its own.";
}
