using Condyle.Model;
using Condyle.Naming;

namespace Condyle.Rules;

/// <summary>CDY5009: a response has one key at a value of its source.</summary>
internal sealed class KeysAtOneValue : ModelRule
{
    public override string Id => "CDY5009";

    public override string Title => "Two keys at one value";

    public override Severity Severity => Severity.Error;

    public override string Fix => "keep one of two equal keys";

    protected override IEnumerable<Finding> Check(RigModel model, Conventions conventions)
    {
        foreach (var response in model.Responses)
        {
            if (response.KeysAreOpen)
                continue;
            var keys = new Dictionary<float, ResponseKey>();
            foreach (var key in response.Keys)
            {
                if (!key.At.TryKnown(out var at))
                    continue;
                if (!keys.TryGetValue(at, out var first))
                {
                    keys[at] = key;
                    continue;
                }

                yield return new Finding(
                    this,
                    response,
                    $"{Wording.First(response.Title)} has two keys at {Invariant.Short(at)}{Values(first, key)}: a curve has one value there, so the rig can't be evaluated. Keep one of them, or move the other.",
                    key.Place)
                {
                    ActsOn = (response.Source as RigSetting)?.Control ?? (response.Source as RigMeasure)?.Node,
                    Related = first.Place == key.Place ? [] : [first.Place],
                    Repairs = Said(first).Equals(Said(key)) ? [new LeaveOut(key.Event, $"Keep one key at {Invariant.Short(at)}")] : [],
                };
                break;
            }
        }
    }

    private static string Values(ResponseKey first, ResponseKey second) => first.Value.TryKnown(out var one) && second.Value.TryKnown(out var other)
        ? $", with the values {Invariant.Short(one)} and {Invariant.Short(other)}"
        : "";

    private static (bool Known, float Value, float? Slope) Said(ResponseKey key) =>
        key.Value.TryKnown(out var value) && key.Slope.TryKnown(out var slope) ? (true, value, slope) : (false, float.NaN, key.Event);
}
