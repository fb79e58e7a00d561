using Condyle.Model;
using Condyle.Naming;

namespace Condyle.Rules;

/// <summary>CDY1006: a node isn't called as another is, even where each can still be found among its own kind.</summary>
internal sealed class NameOfAnotherNode : Rule
{
    public override string Id => "CDY1006";

    public override string Title => "Name that another node has";

    public override Severity Severity => Severity.Info;

    public override IEnumerable<Finding> Check(CheckedRig rig)
    {
        var told = new HashSet<RigElement>();
        foreach (var pair in rig.Namesakes)
        {
            var (node, other) = (pair.Node, pair.Other);
            // Code that ran twice is told of by what must have one name; and a group that lacks the suffix has another name with it.
            if (!pair.IsToldElsewhere && !pair.AreFoundByName && !rig.Repeated.MadeBoth(pair.Before, node) && !IsNamedAsNoGroup(pair, rig.Conventions) && told.Add(node.Copy ?? (RigElement)node)) // a chain that is copied twice is one slip
                yield return new Finding(this, node.Copy ?? (RigElement)node, MessageOf(node, other), node.Place) { ActsOn = node, Related = [other.Place] };
        }
    }

    private static bool IsNamedAsNoGroup(Namesakes pair, Conventions conventions) =>
        pair.Node.Kind != pair.Other.Kind && (pair.Node.Kind == NodeKind.Group || pair.Other.Kind == NodeKind.Group) && pair.Node.Name.EndsWith(conventions.GroupSuffix) == Answer.No;

    private static string MessageOf(RigNode node, RigNode other)
    {
        var kind = Namesakes.KindOf(node);
        var taken = node.Kind == other.Kind ? "another is" : $"a {Namesakes.KindOf(other)} is";
        return node.Copy is { } copy
            ? $"Joints of {copy.Title} are called as {taken}, such as {node.Title}: in every list of the rig's nodes one is taken for the other. Give the copy a tag of its own."
            : $"The {kind} {node.Title} is called as {taken}: in a file that holds both, and in every list of the rig's nodes, one is taken for the other. Give the {kind} a word of its own, such as what it does: 'turn_…'.";
    }
}
