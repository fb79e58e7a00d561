using Condyle.Evaluation;
using Condyle.Model;
using Condyle.Naming;

namespace Condyle.Rules;

/// <summary>CDY5002: a response's curve lies within the range of its dial, and its values within the limits of the channel that it sets.</summary>
internal sealed class CurveOutOfReach : ModelRule
{
    private const int SamplesBetweenKeys = 16;

    public override string Id => "CDY5002";

    public override string Title => "Response out of its dial's range or its channel's limits";

    public override Severity Severity => Severity.Warning;

    protected override IEnumerable<Finding> Check(RigModel model, Conventions conventions)
    {
        var setters = model.Responses.SelectMany(response => response.Targets).Where(target => target.Node is not null).ToLookup(target => (target.Node, target.Way));
        var isOutside = new HashSet<RigResponse>();
        foreach (var of in model.Responses.Where(response => KeysOutside(response).Count > 0).ToLookup(response => response.Source))
        {
            isOutside.UnionWith(of);
            yield return OutsideRange([.. of]);
        }

        foreach (var response in model.Responses)
        {
            if (isOutside.Contains(response) || SourceRange.Of(response.Source) is not { } range || CurveOf(response) is not { } curve)
                continue;
            foreach (var target in response.Targets)
            {
                // Where several responses set the channel, they may make up for each other.
                if (target.Node is { } node && setters[(node, target.Way)].Count() == 1 && LimitOf(target) is { } limit && LeavesAt(curve, range, limit) is { } leaves)
                    yield return OutsideLimits(response, target, limit, leaves);
            }
        }
    }

    private Finding OutsideRange(IReadOnlyList<RigResponse> responses)
    {
        var response = responses[0];
        var range = SourceRange.Of(response.Source)!.Value;
        var outside = responses.SelectMany(KeysOutside).ToList();
        var values = outside.Select(key => Value(key.At)).Distinct().ToList();
        return new Finding(
            this,
            response.Source,
            $"{Wording.First(response.Source!.Title)} goes from {Invariant.Short(range.From)} to {Invariant.Short(range.To)}, and the curve of its response has {(values.Count == 1 ? "a key" : "keys")} at {Wording.Joined(values)}: that part of it is never reached{Reached(response, range)}. {Remedy(response.Source)}",
            outside[0].Place)
        {
            ActsOn = OwnerOf(response),
            Related = [.. outside.Skip(1).Select(key => key.Place).Append(response.Source!.Place).Where(place => place != outside[0].Place).Distinct()],
        };
    }

    private static string Remedy(RigElement source) => source switch
    {
        RigMeasure => "Keep the curve within half a turn to either side; for what turns further, let a dial in degrees turn both.",
        RigSwitch => "Give the curve the range of the switch.",
        _ => "Give the dial the range of the curve, or the curve that of the dial.",
    };

    private Finding OutsideLimits(RigResponse response, ResponseTarget target, ChannelLimit limit, (double At, double Value) leaves)
    {
        var unit = limit.Turns ? "°" : " m";
        return new Finding(
            this,
            response,
            $"With {response.Source!.Title} at {Invariant.Short(leaves.At)}, its response {(limit.Turns ? "turns" : "moves")} {target.Node!.Title} by {Invariant.Short(leaves.Value)}{unit} {(limit.Turns ? "about" : "along")} {limit.Axis}, and the limits there are {Value(limit.From)}{unit} to {Value(limit.To)}{unit}: the control goes where an animator may not set it, and jumps back when it is keyed. Let the curve end at the limit, or widen the limit.",
            target.Place)
        {
            ActsOn = target.Node,
            Related = [.. new[] { limit.Place, response.Place }.Where(place => place != target.Place).Distinct()],
        };
    }

    private static List<ResponseKey> KeysOutside(RigResponse response) =>
        SourceRange.Of(response.Source) is { } range && !response.KeysAreOpen && response.IsContinued.TryKnown(out var isContinued) && !isContinued
            ? response.Keys.FindAll(key => key.At.TryKnown(out var at) && !range.Holds(at))
            : [];

    private static string Reached(RigResponse response, SourceRange range)
    {
        if (CurveOf(response) is not { } curve)
            return "";
        var last = curve.Keys[curve.Keys.Count - 1];
        return range.Holds(last.At) ? "" : $", and at {Invariant.Short(range.To)} it has come to {Invariant.Short(curve.At(range.To))} instead of {Invariant.Short(last.Value)}";
    }

    private static ChannelLimit? LimitOf(ResponseTarget target) =>
        target is { Way: ResponseWay.Move or ResponseWay.Turn, Node: { LimitsAreOpen: false } node } && target.Axis.TryKnown(out var axis)
            ? node.Limits.Find(limit => limit.Axis == axis && limit.Turns == (target.Way == ResponseWay.Turn))
            : null;

    // Onto a channel it counts from the value at rest.
    private static (double At, double Value)? LeavesAt(ResponseCurve curve, SourceRange range, ChannelLimit limit)
    {
        if (!limit.From.TryKnown(out var from) || !limit.To.TryKnown(out var to) || from > 0 || to < 0)
            return null;
        (double At, double Value)? worst = null;
        var most = 1e-3 * (to - from);
        foreach (var at in Samples(curve).Append(range.From).Append(range.To).Where(range.Holds))
        {
            var value = curve.At(at) - curve.At(range.AtRest);
            var beyond = Math.Max(from - value, value - to);
            if (beyond > most)
                (worst, most) = ((at, value), beyond);
        }

        return worst;
    }

    private static IEnumerable<double> Samples(ResponseCurve curve)
    {
        for (var k = 0; k < curve.Keys.Count; k++)
        {
            yield return curve.Keys[k].At;
            for (var i = 1; k + 1 < curve.Keys.Count && i < SamplesBetweenKeys; i++)
                yield return curve.Keys[k].At + ((curve.Keys[k + 1].At - curve.Keys[k].At) * i / SamplesBetweenKeys);
        }
    }

    private static ResponseCurve? CurveOf(RigResponse response)
    {
        var isKnown = !response.KeysAreOpen && response.Keys.Count > 0 && !response.IsContinued.IsOpen
            && response.Keys.TrueForAll(key => !key.At.IsOpen && !key.Value.IsOpen && !key.Slope.IsOpen)
            && response.Keys.Select(key => key.At.TryKnown(out var at) ? at : 0).Distinct().Count() == response.Keys.Count;
        return isKnown ? ResponseCurve.Of(response) : null;
    }

    private static RigNode? OwnerOf(RigResponse response) => (response.Source as RigSetting)?.Control ?? (response.Source as RigMeasure)?.Node;

    private static string Value(Fact<float> fact) => fact.TryKnown(out var value) ? Invariant.Short(value) : Text.Hole;
}
