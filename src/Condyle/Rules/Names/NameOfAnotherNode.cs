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
        var slips = rig.Namesakes
            // Code that ran twice is told of by what must have one name; and a group that lacks the suffix has another name with it.
            .Where(pair => !pair.IsToldElsewhere && !pair.AreFoundByName && !rig.Repeated.MadeBoth(pair.Before, pair.Node) && !IsNamedAsNoGroup(pair, rig.Conventions))
            .Where(pair => told.Add(pair.Node.Copy ?? (RigElement)pair.Node)) // a chain that is copied twice is one slip
            .GroupBy(SlipOf);
        foreach (var slip in slips)
        {
            var (node, other) = (slip.First().Node, slip.First().Other);
            yield return new Finding(this, node.Copy ?? (RigElement)node, MessageOf(node, other, slip.Count() - 1), node.Place) { ActsOn = node, Related = [other.Place] };
        }
    }

    /// <summary>Groups that one sentence makes, and another one made before, are one slip: two feet by a recipe that are called the same share seven on each side.</summary>
    private static (RigElement? Node, PlaceId Place, PlaceId Other) SlipOf(Namesakes pair) =>
        pair.Node.Kind == NodeKind.Group && pair.Other.Kind == NodeKind.Group && pair.Node.Place != pair.Other.Place ? (null, pair.Node.Place, pair.Other.Place) : (pair.Node, pair.Node.Place, pair.Other.Place);

    private static bool IsNamedAsNoGroup(Namesakes pair, Conventions conventions) =>
        pair.Node.Kind != pair.Other.Kind && (pair.Node.Kind == NodeKind.Group || pair.Other.Kind == NodeKind.Group) && pair.Node.Name.EndsWith(conventions.GroupSuffix) == Answer.No;

    private static string MessageOf(RigNode node, RigNode other, int more)
    {
        var kind = Namesakes.KindOf(node);
        var taken = node.Kind == other.Kind ? "another is" : $"a {Namesakes.KindOf(other)} is";
        if (node.Copy is { } copy)
            return $"Joints of {copy.Title} are called as {taken}, such as {node.Title}: in every list of the rig's nodes one is taken for the other. Give the copy a tag of its own.";
        var andMore = more > 0 ? $" (and {more} more made here)" : "";
        var remedy = node.Kind == NodeKind.Group ? "Give the group a word of its own; where a recipe makes it, that is the name in the recipe's options." : $"Give the {kind} a word of its own, such as what it does: 'turn_…'.";
        return $"The {kind} {node.Title} is called as {taken}{andMore}: in a file that holds both, and in every list of the rig's nodes, one is taken for the other. {remedy}";
    }
}
