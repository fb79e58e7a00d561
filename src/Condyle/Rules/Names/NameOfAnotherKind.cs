using Condyle.Model;
using Condyle.Naming;

namespace Condyle.Rules;

/// <summary>CDY1006: a control or group isn't called as a joint or another kind of node is.</summary>
internal sealed class NameOfAnotherKind : Rule
{
    public override string Id => "CDY1006";

    public override string Title => "Name that another kind of node has";

    public override Severity Severity => Severity.Info;

    public override IEnumerable<Finding> Check(RigModel model, Conventions conventions) =>
        from pair in NameTwice.NamesakesIn(model)
        where pair.Node.Kind != pair.Other.Kind && pair.Node.Copy is null
        let kind = NameTwice.KindOf(pair.Node)
        let other = NameTwice.KindOf(pair.Other)
        select new Finding(
            this,
            pair.Node,
            $"The {kind} {pair.Node.Title} is called as {(pair.Other.Kind == NodeKind.Joint ? "an" : "a")} {other} is: in a file that holds both, and in every list of the rig's nodes, one is taken for the other. Give the {kind} a word for what it does, such as 'turn_{pair.Node.Name}'.",
            pair.Node.Place)
        {
            Related = [pair.Other.Place],
        };
}
