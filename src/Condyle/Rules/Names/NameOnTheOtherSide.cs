using Condyle.Model;
using Condyle.Naming;

namespace Condyle.Rules;

/// <summary>CDY1003: a node that is placed at a joint of one side isn't called as if it were of the other.</summary>
internal sealed class NameOnTheOtherSide : ModelRule
{
    public override string Id => "CDY1003";

    public override string Title => "Name says the other side";

    public override Severity Severity => Severity.Warning;

    public override string Fix => "the other side";

    protected override IEnumerable<Finding> Check(RigModel model, Conventions conventions)
    {
        var given = new GivenNames(model);
        Func<RigNode, bool> standsOnASide = node => SideOf(node, conventions) is not null;
        foreach (var node in model.Nodes)
        {
            if (Contradiction(node, conventions) is not ({ } at, { } own, { } stands))
                continue;
            var isTaken = given.Contain(own.Counterpart);
            yield return new Finding(
                this,
                node,
                $"'{own.Name}' says {own.Side} and stands at {at.Title}, which is {stands.Side}: whoever takes it by its name, or mirrors a pose by names, moves the wrong side. {(isTaken ? $"Another is called '{own.Counterpart}', so place" : $"Name it '{own.Counterpart}', or place")} it on the {own.Side}.",
                node.Place)
            {
                Related = at.Place == node.Place ? [] : [at.Place],
                Repairs = isTaken ? [] : [new ReplaceText(node.Id, 0, own.Counterpart, $"Rename to '{own.Counterpart}'") { From = own.Name, IsMeantBy = standsOnASide }],
            };
        }
    }

    /// <summary>The node of one side at which a node stands that is called as if it were of the other; none where it isn't.</summary>
    public static (RigNode At, SidedName Own, SidedName Stands)? Contradiction(RigNode node, Conventions conventions) =>
        node is { Kind: NodeKind.Control or NodeKind.Group, IsUnknown: false }
        && SidedName.Of(node.Name, conventions) is { } own
        && SideOf(node, conventions) is var (at, stands) && stands.Side != own.Side
            ? (at, own, stands)
            : null;

    private static (RigNode At, SidedName Stands)? SideOf(RigNode node, Conventions conventions) =>
        node.Placement.TryKnown(out var placement) && placement is AtNode { Target: var at } && SidedName.Of(at.Name, conventions) is { } stands ? (at, stands) : null;
}
