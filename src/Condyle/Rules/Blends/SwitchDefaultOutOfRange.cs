using Condyle.Model;
using Condyle.Naming;

namespace Condyle.Rules;

/// <summary>CDY2008: a switch goes from 0 to 1, and so does its default.</summary>
internal sealed class SwitchDefaultOutOfRange : ModelRule
{
    public override string Id => "CDY2008";

    public override string Title => "Switch that rests outside 0 to 1";

    public override Severity Severity => Severity.Error;

    public override string Fix => "the nearest end of the range";

    protected override IEnumerable<Finding> Check(RigModel model, Conventions conventions)
    {
        foreach (var given in model.Switches)
        {
            if (given.IsUnknown || !given.AtRest.TryKnown(out var atRest) || atRest is >= 0 and <= 1)
                continue;
            var nearest = atRest > 1 ? 1 : 0;
            yield return new Finding(
                this,
                given,
                $"{Wording.First(given.Title)} rests at {Invariant.Short(atRest)}, and a switch goes from 0 to 1: what it weights starts out beyond its sources, and the first touch makes it jump. Let it rest at {nearest}.",
                given.Place)
            {
                ActsOn = given.Control,
                Repairs = [new ReplaceNumber(given.Id, 1, nearest, $"Let {given.Title} rest at {nearest}")],
            };
        }
    }
}
