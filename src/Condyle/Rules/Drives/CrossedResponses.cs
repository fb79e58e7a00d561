using Condyle.Model;

namespace Condyle.Rules;

/// <summary>Responses of a node to a dial, a switch or an angle of the other side, where this side has its own.</summary>
internal sealed class CrossedResponses
{
    private readonly CheckedRig rig;
    private readonly SidePairs pairs;
    private readonly Lazy<HashSet<(RigElement?, RigNode?, ResponseWay, Axis?)>> taken;
    private readonly Lazy<HashSet<RigElement?>> used;
    private readonly Lazy<Dictionary<(RigNode, string), RigElement>> sources;

    private CrossedResponses(CheckedRig rig)
    {
        (this.rig, pairs) = (rig, rig.Pairs);
        taken = new(() => [.. rig.Model.Responses.SelectMany(response => response.Targets, (response, target) => (response.Source, target.Node, target.Way, AxisOf(target)))]);
        used = new(() => [.. rig.Model.Responses.Select(response => response.Source)]);
        sources = new(() => ByName(rig.Model));
    }

    public static IEnumerable<CrossedSource> In(CheckedRig rig)
    {
        var responses = new CrossedResponses(rig);
        return rig.Model.Responses.Where(response => response is { TargetsAreOpen: false, Source: not null }).SelectMany(responses.CrossedIn);
    }

    private IEnumerable<CrossedSource> CrossedIn(RigResponse response)
    {
        if (NodeOf(response.Source) is not { IsUnknown: false } node || pairs.SideOf(node) is not { } theirs || pairs.CounterpartOf(node) is not { } meantNode || NameOnTheOtherSide.Contradiction(node, rig.Conventions) is not null)
            yield break;
        // A curve that is there for its own side keeps its source.
        var isShared = response.Targets.Exists(target => target.Node is not null && pairs.SideOf(target.Node) == theirs);
        foreach (var target in response.Targets)
        {
            if (target.Node is not { IsUnknown: false } follower || pairs.SideOf(follower) is not { } mine || mine == theirs
                || IsShownFor(response.Source!, mine) || !IsMistaken(follower, node, response.Source!) || CounterpartOf(response.Source!, meantNode) is not { } meant || Takes(meant, follower, target))
                continue;
            yield return new(response, FollowWay.Responding, follower, mine, response.Source!, meant)
            {
                Given = isShared ? null : (response.Id, 0),
                Place = target.Place,
                // What is there for nothing is what was meant.
                Instead = (isShared || (response.Targets.Count == 1 && used.Value.Contains(meant))) && pairs.CounterpartOf(follower) is { } other && !Takes(response.Source!, other, target) ? (target.Event, other) : null,
            };
        }
    }

    /// <summary>Whether what a response sets of its target is set of a node by a source as well.</summary>
    private bool Takes(RigElement source, RigNode node, ResponseTarget target) => taken.Value.Contains((source, node, target.Way, AxisOf(target)));

    // Arms swing against the legs, and one jaw turns as the other does: a limb that goes by its own mirror image was crossed.
    private bool IsMistaken(RigNode follower, RigNode node, RigElement source) =>
        (source is not RigMeasure || Limbs.JointOf(node) != Limbs.JointOf(pairs.CounterpartOf(follower.Original ?? follower)))
        && (pairs.IsNamedAfter(node, follower) || pairs.IsNamedAfter(follower, node) || Limbs.AreOne(pairs.CounterpartOf(follower.Original ?? follower), node, pairs));

    /// <summary>Whether a setting is on a control of a side, or of the middle, as well.</summary>
    private bool IsShownFor(RigElement source, Side side) => source is RigSetting setting && (setting.PlacesAreOpen || setting.AlsoOn.Exists(control => control is null || pairs.SideOf(control) is not { } shown || shown == side));

    // An angle can be measured of any node.
    private RigElement? CounterpartOf(RigElement source, RigNode onNode) =>
        KeyOf(source, pairs) is { } key && sources.Value.TryGetValue((onNode, key), out var found) ? found : source is RigMeasure ? onNode : null;

    private Dictionary<(RigNode, string), RigElement> ByName(RigModel model)
    {
        var found = new Dictionary<(RigNode, string), RigElement>();
        foreach (var source in model.Switches.Cast<RigElement>().Concat(model.Dials).Concat(model.Measures))
        {
            if (NodeOf(source) is { } node && KeyOf(source, null) is { } key)
                found[(node, key)] = source;
        }

        return found;
    }

    private static Axis? AxisOf(ResponseTarget target) => target.Axis.TryKnown(out var axis) ? axis : null;

    private static RigNode? NodeOf(RigElement? source) => source switch
    {
        RigSetting setting => setting.Control,
        RigMeasure measure => measure.Node,
        _ => null,
    };

    // A setting goes by its name, in the mirror where it says a side, and an angle by its axis.
    private static string? KeyOf(RigElement source, SidePairs? mirror) => source switch
    {
        RigSetting setting when mirror is not null => mirror.MirrorOf(setting.Name),
        RigSetting setting => setting.Name.TryKnown(out var name) ? name : null,
        RigMeasure measure => measure.Axis.TryKnown(out var axis) && axis is not null ? $"about {axis}" : null,
        _ => null,
    };
}
