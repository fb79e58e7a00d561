using Condyle.Model;
using Condyle.Naming;

namespace Condyle.Rules;

/// <summary>CDY9001: rig code that throws whenever it runs builds no rig.</summary>
internal sealed class RigCodeFails : ModelRule
{
    public override string Id => "CDY9001";

    public override string Title => "Rig code that fails whenever it runs";

    public override Severity Severity => Severity.Error;

    protected override IEnumerable<Finding> Check(RigModel model, Conventions conventions) =>
        from gap in model.Gaps
        where gap.IsFailure
        select new Finding(this, null, $"Whichever way {gap.Of} goes, it fails here and can't be built, nor checked as a whole: {gap.Reason}", gap.Place) { Related = gap.Callers };
}
