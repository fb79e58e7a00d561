using Condyle.Model;
using Condyle.Naming;

namespace Condyle.Rules;

/// <summary>CDY4005: under a joint that is scaled along some axes and not along others, a turned joint is sheared.</summary>
internal sealed class UnevenScale : RuleOfMoves
{
    public override string Id => "CDY4005";

    public override string Title => "Uneven scale over a joint that turns";

    public override Severity Severity => Severity.Warning;

    protected override IEnumerable<Finding> Check(RigModel model, Moves moves, Conventions conventions)
    {
        var scaled = new Dictionary<RigNode, Scaling>();
        foreach (var drive in model.Drives)
        {
            if (drive is { Target: { IsExported: true, IsUnknown: false } joint, Sources: [{ IsCertain: true, Way: DriveWay.Channels, Source: { Kind: NodeKind.Control } control } source] }
                && drive.WritesScale.TryKnown(out var scales) && scales && control.Locked.TryKnown(out var locked))
                Add(scaled, joint, drive, source.Place, Channels.Scale & ~locked);
        }

        foreach (var response in model.Responses.Where(response => !response.TargetsAreOpen && response.Keys.Count > 0))
        {
            foreach (var target in response.Targets)
            {
                if (target is { Way: ResponseWay.Scale, Node: { IsExported: true, IsUnknown: false } joint } && target.Axis.TryKnown(out var axis))
                    Add(scaled, joint, response, target.Place, ScaleAlong(axis));
            }
        }

        return scaled.Count == 0 ? [] : FindingsOf(scaled, model, moves);
    }

    private IEnumerable<Finding> FindingsOf(Dictionary<RigNode, Scaling> scaled, RigModel model, Moves moves)
    {
        foreach (var child in model.Nodes)
        {
            if (!child.IsExported || child.IsUnknown || !child.Parent.TryKnown(out var parent) || parent is null
                || !scaled.TryGetValue(parent, out var scaling) || scaling.IsTold || scaling.Axes is Channels.None or Channels.Scale || !Turns(child, moves))
                continue;
            scaling.IsTold = true;
            yield return new Finding(
                this,
                scaling.By,
                $"{parent.Title} is scaled along {Listed(scaling.Axes)} and not along its other axes, and {child.Title} below it turns: {child.Title} is sheared then, which no translation, rotation and scale can say, so its skin leans over and the bake differs from what the animator sees. Scale all axes alike, or a joint that has no others below.",
                scaling.Place)
            {
                ActsOn = parent,
                Related = child.Place == PlaceId.None || child.Place == scaling.Place ? [] : [child.Place],
            };
        }
    }

    private static bool Turns(RigNode child, Moves moves) => moves.Of(child).Any(move => move.IsCertain && move.Sentence is not RigResponse);

    private static void Add(Dictionary<RigNode, Scaling> scaled, RigNode joint, RigElement by, PlaceId place, Channels axes)
    {
        if (!scaled.TryGetValue(joint, out var scaling))
            scaled[joint] = scaling = new Scaling(by, place);
        scaling.Axes |= axes;
    }

    private static Channels ScaleAlong(Axis axis) => axis switch
    {
        Axis.X => Channels.ScaleX,
        Axis.Y => Channels.ScaleY,
        _ => Channels.ScaleZ,
    };

    private static string Listed(Channels axes) =>
        string.Join(" and ", new[] { (Channels.ScaleX, "X"), (Channels.ScaleY, "Y"), (Channels.ScaleZ, "Z") }.Where(axis => axes.HasFlag(axis.Item1)).Select(axis => axis.Item2));

    /// <summary>What scales a joint, and along which axes.</summary>
    private sealed class Scaling(RigElement by, PlaceId place)
    {
        public RigElement By => by;

        public PlaceId Place => place;

        public Channels Axes { get; set; }

        public bool IsTold { get; set; }
    }
}
