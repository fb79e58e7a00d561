using Condyle.Model;
using Condyle.Naming;

namespace Condyle.Rules;

/// <summary>CDY5007: the limits of a channel hold its rest, which is zero.</summary>
internal sealed class LimitsWithoutRest : ModelRule
{
    private const float Tolerance = 1e-4f;

    public override string Id => "CDY5007";

    public override string Title => "Limits that leave out rest";

    public override Severity Severity => Severity.Warning;

    public override string Fix => "turn the limits round";

    protected override IEnumerable<Finding> Check(RigModel model, Conventions conventions)
    {
        foreach (var control in model.Nodes)
        {
            foreach (var limit in control.Limits)
            {
                if (control.LimitsAreOpen || !limit.From.TryKnown(out var from) || !limit.To.TryKnown(out var to) || !(from > Tolerance || to < -Tolerance))
                    continue;
                var isReversed = from > to;
                var (channel, unit) = limit.Turns ? ($"turn about {limit.Axis}", "°") : ($"move along {limit.Axis}", " m");
                yield return new Finding(
                    this,
                    control,
                    isReversed
                        ? $"The limits of the {channel} of {control.Title} go from {Invariant.Short(from)}{unit} to {Invariant.Short(to)}{unit}, the greater first: no value lies between them, so an animator can't set any. Give the lesser first."
                        : $"The {channel} of {control.Title} is limited to {Invariant.Short(from)}{unit} to {Invariant.Short(to)}{unit}, and at rest it is 0: the control begins outside its limits and can never go back to rest once it was moved. Place the control where the range begins, or let the range hold 0.",
                    limit.Place)
                {
                    Related = control.Place == limit.Place ? [] : [control.Place],
                    Repairs = isReversed && to <= Tolerance && from >= -Tolerance ? [new SwapArguments(limit.Event, 1, 2, $"Limit it from {Invariant.Short(to)}{unit} to {Invariant.Short(from)}{unit}")] : [],
                };
            }
        }
    }
}
