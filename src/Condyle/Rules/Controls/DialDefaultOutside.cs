using Condyle.Model;
using Condyle.Naming;

namespace Condyle.Rules;

/// <summary>CDY5008: a dial's default lies within its range.</summary>
internal sealed class DialDefaultOutside : ModelRule
{
    public override string Id => "CDY5008";

    public override string Title => "Dial whose default lies outside its range";

    public override Severity Severity => Severity.Error;

    public override string Fix => "the nearest end of the range";

    protected override IEnumerable<Finding> Check(RigModel model, Conventions conventions)
    {
        foreach (var dial in model.Dials)
        {
            if (SourceRange.Of(dial) is not { } range || (range.AtRest >= range.From && range.AtRest <= range.To))
                continue;
            var nearest = Math.Max(range.From, Math.Min(range.To, range.AtRest));
            yield return new Finding(
                this,
                dial,
                $"{Wording.First(dial.Title)} on {dial.Control?.Title ?? "a control"} goes from {Invariant.Short(range.From)} to {Invariant.Short(range.To)}, and at rest it is {Invariant.Short(range.AtRest)}: no animator can set it back there, and the rig can't be evaluated. Give it a default within its range, such as {Invariant.Short(nearest)}, or a range that holds {Invariant.Short(range.AtRest)}.",
                dial.Place)
            {
                ActsOn = dial.Control,
                Repairs = [new ReplaceNumber(dial.Id, 3, (float)nearest, $"Let {dial.Title} rest at {Invariant.Short(nearest)}")],
            };
        }
    }
}
