using Condyle.Model;
using Condyle.Naming;

namespace Condyle.Rules;

/// <summary>CDY9002: a rig of which a part couldn't be read is checked only as far as it was.</summary>
internal sealed class RigNotReadWhole : ModelRule
{
    public override string Id => "CDY9002";

    public override string Title => "Rig not read whole";

    public override Severity Severity => Severity.Info;

    /// <summary>Says that a rule itself failed.</summary>
    public static Finding For(Rule failed, Exception unexpected, RigModel model) => new(
        RuleBook.All.OfType<RigNotReadWhole>().Single(),
        null,
        $"Slips of {failed.Id} may go unseen in this rig, as the rule failed with {unexpected.GetType().Name}: {unexpected.Message}",
        (model.Nodes.FirstOrDefault(node => !node.IsUnknown) ?? (RigElement?)model.Skeletons.FirstOrDefault())?.Place ?? PlaceId.None);

    protected override IEnumerable<Finding> Check(RigModel model, Conventions conventions) =>
        from gap in model.Gaps
        where !gap.IsFailure
        select new Finding(this, null, $"Slips in {gap.Of} may go unseen, as it isn't read whole: {gap.Reason}.", gap.Place) { Related = gap.Callers };
}
