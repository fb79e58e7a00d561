using Condyle.Model;
using Condyle.Naming;

namespace Condyle.Rules;

/// <summary>CDY1006: a node isn't called as another is, even where each can still be found among its own kind.</summary>
internal sealed class NameOfAnotherNode : ModelRule
{
    public override string Id => "CDY1006";

    public override string Title => "Name that another node has";

    public override Severity Severity => Severity.Info;

    protected override IEnumerable<Finding> Check(RigModel model, Conventions conventions)
    {
        var told = new HashSet<RigElement>();
        foreach (var pair in Namesakes.In(model))
        {
            var (node, other) = pair;
            if (!pair.AreFoundByName && told.Add(node.Copy ?? (RigElement)node)) // a chain that is copied twice is one slip
                yield return new Finding(this, node.Copy ?? (RigElement)node, MessageOf(node, other), node.Place) { ActsOn = node, Related = [other.Place] };
        }
    }

    private static string MessageOf(RigNode node, RigNode other)
    {
        var kind = Namesakes.KindOf(node);
        var taken = node.Kind == other.Kind ? "another is" : $"a {Namesakes.KindOf(other)} is";
        return node.Copy is { } copy
            ? $"Joints of {copy.Title} are called as {taken}, such as {node.Title}: in every list of the rig's nodes one is taken for the other. Give the copy a tag of its own."
            : $"The {kind} {node.Title} is called as {taken}: in a file that holds both, and in every list of the rig's nodes, one is taken for the other. Give the {kind} a word of its own, such as what it does: 'turn_…'.";
    }
}
