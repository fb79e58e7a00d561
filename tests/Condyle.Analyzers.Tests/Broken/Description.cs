using Condyle.Evaluation;
using Condyle.Model;
using Condyle.Naming;

namespace Condyle.Analyzers.Tests.Broken;

/// <summary>What the page of a rule describes, said of a model a second time and in another way: plainly, without regard to cost, and by numbers where the rule goes by words.</summary>
/// <param name="Rule">The rule's id.</param>
/// <param name="In">What is like that in a rig, each thing by its name.</param>
internal sealed record Description(string Rule, Func<RigModel, IEnumerable<string>> In)
{
    private const double Near = 1e-4;

    public static IReadOnlyList<Description> All { get; } =
    [
        new("CDY1001", rig => Of(rig, NodeKind.Group).Where(name => !name.EndsWith("_group", StringComparison.Ordinal))),
        new("CDY1002", rig => Twice(Of(rig, NodeKind.Control)).Concat(Twice(Of(rig, NodeKind.Joint)))),
        new("CDY1003", rig => rig.Nodes.Where(node => node.Kind is NodeKind.Control or NodeKind.Group && Side(node) is { } own && PlacedAt(node) is { } at && Side(at) is { } other && own != other).Select(Name)),
        new("CDY1005", rig => Of(rig, NodeKind.Control).Where(name => name.EndsWith("_group", StringComparison.Ordinal))),
        new("CDY2001", rig => rig.Blends.Where(blend => blend.Sources.Count > 0 && !AddsUpToOne(blend)).Select(blend => blend.Title)),
        new("CDY2002", rig => rig.Blends.Where(blend => blend is { Node: not null, Sources.Count: 1 } && AddsUpToOne(blend)).Select(blend => blend.Title)),
        new("CDY2003", rig => rig.Drives.Where(drive => drive.Target is { IsExported: true } target && SourceOf(drive) is { Original: { } original, Copy.Chain.Joints: { } chain } && original != target && chain.Contains(target)).Select(drive => Name(drive.Target!))),
        new("CDY2006", rig => rig.Switches.Where(sw => !Weights(rig).Any(weight => weight.Switches.Contains(sw.Id)) && !rig.Responses.Exists(response => response.Source == sw)).Select(sw => sw.Title)
            .Concat(rig.Choices.Where(choice => !rig.Spaces.Exists(space => space.Choice == choice) && !Weights(rig).Any(weight => choice.Options.Exists(option => weight.Switches.Contains(option.Id)))).Select(choice => choice.Title))),
        new("CDY2008", rig => rig.Switches.Where(sw => Known(sw.AtRest) is < 0 or > 1).Select(sw => sw.Title)),
        new("CDY2009", rig => rig.Blends.Where(blend => blend.Chain?.Joints is { } joints && blend.Sources.Exists(source => source.Copy is { } copy && !copy.Joints.Exists(each => joints.Contains(each.Original!)))).Select(blend => blend.Title)),
        new("CDY3001", rig => rig.Drives.Where(drive => drive.Target is { IsExported: true } && drive.Sources is [.., { Way: DriveWay.Matrix }]).Select(drive => Name(drive.Target!))),
        new("CDY3002", rig => rig.Drives.Where(drive => drive.Target is not null).SelectMany(drive => drive.Sources.Select(source => (Node: drive.Target!, source.Way, What: Known(drive.Writes) ?? Channels.All)))
            .Concat(rig.Twists.SelectMany(twist => twist.Joints!.Select(joint => (Node: joint!, Way: DriveWay.Channels, What: Channels.Turn))))
            .Concat(rig.Blends.Where(blend => blend.Sources.Count > 0 && AddsUpToOne(blend)).SelectMany(blend => blend.Chain?.Joints ?? [blend.Node!]).Concat(Solved(rig)).Select(node => (Node: node, Way: DriveWay.Channels, What: Channels.All)))
            .Where(written => !written.Node.IsExported || written.Way == DriveWay.Channels).GroupBy(written => (written.Node, written.Way))
            .Where(all => all.Index().Any(one => all.Index().Any(other => other.Index != one.Index && (one.Item.What & ~other.Item.What & ~Channels.Scale) == Channels.None))).Select(all => Name(all.Key.Node))),
        new("CDY3003", rig => Fault(rig) is { } fault && fault.Contains("loop", StringComparison.Ordinal) ? [fault] : []),
        new("CDY3005", rig => rig.Drives.Where(drive => drive.Kept is not null).GroupBy(drive => drive.Kept!.Place).Where(said => said.All(drive => drive.Target is { } target && SourceOf(drive) is { } source && RestAlike(rig, target, source, withScale: Known(drive.WritesScale))))
            .SelectMany(said => said).Select(drive => Name(drive.Target!))),
        new("CDY3008", rig => StiffJoints(rig)),
        new("CDY4001", rig => rig.Copies.Where(copy => HolderOf(copy) is { IsExported: true }).Select(copy => copy.Title)),
        new("CDY4002", rig => rig.Copies.Exists(copy => HolderOf(copy) is { Kind: NodeKind.Group }) ? rig.Copies.Where(copy => HolderOf(copy) is { Kind: NodeKind.Control }).Select(copy => copy.Title) : []),
        new("CDY5003", rig => rig.Nodes.Where(node => node.Kind == NodeKind.Group && node.Unlocked.Count > 0 && Known(node.Locked) != Channels.All && !IsWritten(rig, node, byChannels: true)).Select(Name)),
        new("CDY5006", rig => Idle(rig)),
        new("CDY5007", rig => rig.Nodes.Where(node => node.Limits.Exists(limit => Known(limit.From) > 0 || Known(limit.To) < 0)).Select(Name)),
        new("CDY5008", rig => rig.Dials.Where(dial => Known(dial.AtRest) < Math.Min(Known(dial.From), Known(dial.To)) || Known(dial.AtRest) > Math.Max(Known(dial.From), Known(dial.To))).Select(dial => dial.Title)),
        new("CDY5009", rig => rig.Responses.Where(response => response.Keys.GroupBy(key => Known(key.At)).Any(same => same.Count() > 1)).Select(response => response.Title)),
        new("CDY7001", rig => rig.TwoBones.Where(solver => solver.Copy is { Joints.Count: not 3 }).Select(solver => solver.Title)),
        new("CDY7002", rig => rig.Copies.Where(copy => copy.Tag.ToString() == "ik" && !copy.Joints.Exists(joint => IsWritten(rig, joint))).Select(copy => copy.Title)),
        new("CDY7006", rig => rig.TwoBones.Cast<RigSolver>().Concat(rig.ManyBones).Where(solver => new[] { Known(solver.Goal), Known(solver.Pole) }.OfType<RigNode>().Any(end => Above(end).Any(node => node.Copy == solver.Copy))).Select(solver => solver.Title)),
        new("CDY8001", rig => AwayFromRest(rig)),
        new("CDY9003", rig => rig.Drives.Where(drive => drive.Sources.Count == 0).Select(drive => drive.Title)
            .Concat(rig.Blends.Where(blend => blend.Sources.Count == 0).Select(blend => blend.Title))
            .Concat(rig.TwoBones.Cast<RigSolver>().Concat(rig.ManyBones).Where(solver => Known(solver.Goal) is null).Select(solver => solver.Title))
            .Concat(rig.Aims.Where(aim => Known(aim.Target) is null).Select(aim => aim.Title))
            .Concat(rig.Twists.Where(twist => Known(twist.Ends) is null).Select(twist => twist.Title))
            .Concat(rig.Responses.Where(response => response.Targets.Count == 0 || response.Keys.Count == 0).Select(response => response.Title))),
    ];

    /// <summary>Why a rig can't be evaluated; none where it can.</summary>
    public static string? Fault(RigModel rig)
    {
        try
        {
            var frames = new PoseFrames(rig, RestPose.Of(rig), new Pose());
            foreach (var node in rig.Nodes)
                frames.WorldOf(node);
            return null;
        }
        catch (RigGeometryException fault)
        {
            return fault.Message;
        }
    }

    private static string Name(RigNode node) => node.Name.ToString();

    private static IEnumerable<string> Of(RigModel rig, NodeKind kind) => rig.Nodes.Where(node => node.Kind == kind).Select(Name);

    private static IEnumerable<string> Twice(IEnumerable<string> names) => names.GroupBy(name => name).Where(same => same.Count() > 1).Select(same => same.Key);

    private static T? Known<T>(Fact<T> fact) => fact.TryKnown(out var known) ? known : default;

    private static RigNode? PlacedAt(RigNode node) => Known(node.Placement) is AtNode at ? at.Target : null;

    private static RigNode? HolderOf(RigCopy copy) => copy.Joints.Count > 0 ? Known(copy.Joints[0].Parent) : null;

    private static RigNode? SourceOf(RigDrive drive) => drive.Sources is [.., var last] ? last.Source : null;

    private static Side? Side(RigNode node) => Name(node) is var name && (name + "_").Contains("_left_", StringComparison.Ordinal) == (name + "_").Contains("_right_", StringComparison.Ordinal) ? null
        : (name + "_").Contains("_left_", StringComparison.Ordinal) ? Condyle.Side.Left : Condyle.Side.Right;

    private static IEnumerable<RigNode> Above(RigNode node)
    {
        var seen = new HashSet<RigNode>();
        for (var at = node; at is not null && seen.Add(at); at = Known(at.Parent))
            yield return at;
    }

    private static IEnumerable<WeightPolynomial> Weights(RigModel rig) => rig.Blends.SelectMany(blend => blend.Sources).Select(source => Known(source.Weight))
        .Concat(rig.Labels.Select(label => Known(label.ShownBy)))
        .Concat(rig.TwoBones.Select(solver => Known(solver.Stretch)?.Weight))
        .Concat(rig.Curves.Select(curve => Known(curve.Stretch))).OfType<WeightPolynomial>();

    // By values, not by the form: a polynomial that is one at so many points is one.
    private static bool AddsUpToOne(RigBlend blend)
    {
        var random = new Random(1);
        for (var i = 0; i < 20; i++)
        {
            var values = new Dictionary<int, double>();
            double ValueOf(int sw) => values.TryGetValue(sw, out var value) ? value : values[sw] = random.NextDouble();
            if (Math.Abs(blend.Sources.Sum(source => Known(source.Weight)!.At(ValueOf)) - 1) > Near)
                return false;
        }

        return true;
    }

    private static bool IsWritten(RigModel rig, RigNode node, bool byChannels = false) => rig.Drives.Exists(drive => drive.Target == node && drive.Sources is [.., var last] && (!byChannels || last.Way == DriveWay.Channels))
        || rig.Blends.Exists(blend => blend.Node == node || (blend.Chain?.Joints?.Contains(node) ?? false))
        || Solved(rig).Contains(node)
        || rig.Aims.Exists(aim => aim.Node == node)
        || rig.Twists.Exists(twist => twist.Joints?.Contains(node) ?? false)
        || rig.Falloffs.Exists(falloff => falloff.Joints?.Contains(node) ?? false)
        || rig.Responses.Exists(response => response.Targets.Exists(target => target.Node == node))
        || rig.Spaces.Exists(space => space.Control == node);

    private static IEnumerable<RigNode> Solved(RigModel rig) =>
        rig.TwoBones.Cast<RigSolver>().Concat(rig.ManyBones).Select(solver => solver.Copy).Concat(rig.Curves.Select(curve => curve.Copy)).SelectMany(copy => copy?.Joints ?? []);

    /// <summary>Deform joints that nothing moves, of which the other side's is driven or blended, and for which this side has a control or a copy.</summary>
    private static IEnumerable<string> StiffJoints(RigModel rig) => rig.Nodes
        .Where(joint => joint.IsExported && Known(joint.Role) == JointRole.Deform && Side(joint) is not null && !IsWritten(rig, joint)
            && (rig.Drives.Exists(drive => drive.Target is { IsExported: true } other && Name(other) == Mirrored(joint) && SourceOf(drive) is { Kind: NodeKind.Control } control
                    && (Of(rig, NodeKind.Control).Contains(Mirrored(control)) || rig.Nodes.Exists(node => node.Kind == NodeKind.Control && PlacedAt(node) == joint)))
                || (rig.Copies.Exists(copy => copy.Chain.Joints!.Contains(joint)) && rig.Blends.Exists(blend => blend.Chain?.Joints?.Any(other => Name(other) == Mirrored(joint)) ?? false))))
        .Select(Name);

    private static string Mirrored(RigNode node) => SidedName.Of(node.Name, Conventions.Default)?.Counterpart ?? Name(node);

    private static bool RestAlike(RigModel rig, RigNode a, RigNode b, bool withScale)
    {
        if (Fault(rig) is not null)
            return false;
        var (one, other) = (RestPose.Of(rig).WorldOf(a), RestPose.Of(rig).WorldOf(b));
        return AreAlike(withScale ? one : one.Frame, withScale ? other : other.Frame);
    }

    private static bool AreAlike(Affine3d a, Affine3d b) => (a.Origin - b.Origin).Length < Near && (a.X - b.X).Length < Near && (a.Y - b.Y).Length < Near && (a.Z - b.Z).Length < Near;

    private static IEnumerable<string> AwayFromRest(RigModel rig)
    {
        if (Fault(rig) is not null)
            return [];
        var (rest, frames) = (RestPose.Of(rig), new PoseFrames(rig, RestPose.Of(rig), new Pose()));
        return rig.Nodes.Where(node => node.IsExported && Differ(rest.WorldOf(node), frames.WorldOf(node))).Select(Name).Take(1);
    }

    // Twice as much as the rule lets pass.
    private static bool Differ(Affine3d a, Affine3d b) => (a.Origin - b.Origin).Length > 2e-4 || (a.X - b.X).Length > 2e-3 || (a.Y - b.Y).Length > 2e-3 || (a.Z - b.Z).Length > 2e-3;

    /// <summary>Placed controls that carry nothing, hold no switch, and under whose turn and move no other node stirs, whatever the switches.</summary>
    private static IEnumerable<string> Idle(RigModel rig)
    {
        if (Fault(rig) is not null)
            return [];
        var rest = RestPose.Of(rig);
        var settings = rig.Switches.Cast<RigSetting>().Concat(rig.Dials).Concat(rig.Choices).SelectMany(setting => setting.AlsoOn.Append(setting.Control)).ToHashSet();
        var random = new Random(1);
        var switches = new Pose();
        foreach (var sw in rig.Switches)
            switches.SetSwitch(sw.Id, 0.2 + (0.6 * random.NextDouble()));
        var still = new PoseFrames(rig, rest, switches);
        return rig.Nodes.Where(control => control.Kind == NodeKind.Control && Known(control.Placement) is not null && !settings.Contains(control) && StirsNothing(control)).Select(Name);

        bool StirsNothing(RigNode control)
        {
            var moved = new Pose();
            random = new Random(1);
            foreach (var sw in rig.Switches)
                moved.SetSwitch(sw.Id, 0.2 + (0.6 * random.NextDouble()));
            moved.Set(control.Id, new Trs(new Vector3d(0.03, 0.05, -0.04), new Quaterniond(0.1, 0.2, -0.1, 0.9).Normalized(), Vector3d.One));
            var frames = new PoseFrames(rig, rest, moved);
            return !rig.Nodes.Exists(node => node != control && !AreAlike(still.WorldOf(node), frames.WorldOf(node)));
        }
    }
}
