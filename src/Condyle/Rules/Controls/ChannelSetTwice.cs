using Condyle.Model;
using Condyle.Naming;

namespace Condyle.Rules;

/// <summary>CDY5011: a response sets a channel once.</summary>
internal sealed class ChannelSetTwice : ModelRule
{
    public override string Id => "CDY5011";

    public override string Title => "Channel that one response sets twice";

    public override Severity Severity => Severity.Warning;

    public override string Fix => "set it once";

    protected override IEnumerable<Finding> Check(RigModel model, Conventions conventions)
    {
        foreach (var response in model.Responses)
        {
            if (response.TargetsAreOpen || response.Targets.Count < 2)
                continue;
            var first = new Dictionary<(ResponseWay, RigNode?, Axis, string), ResponseTarget>();
            foreach (var target in response.Targets)
            {
                if (KeyOf(target) is not { } key)
                    continue;
                if (!first.TryGetValue(key, out var before))
                    first.Add(key, target);
                else
                    yield return FindingOf(response, before, target);
            }
        }
    }

    private Finding FindingOf(RigResponse response, ResponseTarget before, ResponseTarget target)
    {
        var what = target.Node is { } node ? $"the {Channel(target)} of {node.Title}" : $"the morph target '{target.Morph.Target}'";
        return new Finding(
            this,
            response,
            $"{Wording.First(response.Title)} sets {what} twice: what is set on one channel adds up, so its curve counts double there. Say it once, and give the curve other values if it is to go further.",
            target.Place)
        {
            ActsOn = target.Node,
            Related = before.Place == target.Place ? [] : [before.Place],
            Repairs = [new LeaveOut(target.Event, $"Set {what} once")],
        };
    }

    private static (ResponseWay, RigNode?, Axis, string)? KeyOf(ResponseTarget target) =>
        target.Way == ResponseWay.Morph
            ? target.Morph.Mesh.TryKnown(out var mesh) && target.Morph.Target.TryKnown(out var morph) ? (target.Way, null, default, $"{mesh}\n{morph}") : null
            : target.Node is { IsUnknown: false } node && target.Axis.TryKnown(out var axis) ? (target.Way, node, axis, "") : null;

    private static string Channel(ResponseTarget target)
    {
        target.Axis.TryKnown(out var axis);
        return target.Way switch
        {
            ResponseWay.Turn => $"turn about {axis}",
            ResponseWay.Move => $"move along {axis}",
            _ => $"scale along {axis}",
        };
    }
}
