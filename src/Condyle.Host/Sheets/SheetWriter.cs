using System.Globalization;
using Condyle.Evaluation;
using Condyle.Model;

namespace Condyle.Host.Sheets;

/// <summary>Writes a rig's sheet from its model.</summary>
internal sealed class SheetWriter
{
    private readonly RigModel model;
    private readonly RestPose rest;
    private readonly Dictionary<int, string> names = [];
    private readonly List<SheetRelation> relations = [];

    private SheetWriter(RigModel model)
    {
        (this.model, rest) = (model, RestPose.KnownOf(model));
        var taken = new Dictionary<string, int>(StringComparer.Ordinal);
        foreach (var (id, given) in model.Nodes.Select(node => (node.Id, node.Name)).Concat(model.Labels.Select(label => (label.Id, label.Name))))
        {
            var name = given.ToString();
            var count = taken[name] = taken.GetValueOrDefault(name) + 1;
            names[id] = count == 1 ? name : $"{name} #{count}";
        }
    }

    public static RigSheet Of(Rig rig)
    {
        var writer = new SheetWriter(rig.Model);
        writer.AddDrives();
        writer.AddBlends();
        writer.AddSolvers();
        writer.AddTurns();
        writer.AddResponses();
        writer.AddLabels();
        return new RigSheet(rig.Name, [.. writer.ParentsFirst().SelectMany(node => writer.LabelsUnder(node).Prepend(writer.Node(node))), .. writer.LabelsUnder(null)], writer.relations);
    }

    private IEnumerable<RigNode> ParentsFirst()
    {
        var below = model.Nodes.ToLookup(node => node.Parent.TryKnown(out var parent) && parent is not null ? parent.Id : -1);
        var waiting = new Stack<RigNode>(below[-1].Reverse());
        while (waiting.TryPop(out var node))
        {
            yield return node;
            foreach (var child in below[node.Id].Reverse())
                waiting.Push(child);
        }
    }

    private SheetNode Node(RigNode node)
    {
        var isPlaced = rest.TryWorldOf(node, out var world);
        var turn = isPlaced ? world.Rotation : default;
        return new SheetNode(
            names[node.Id],
            node.Kind switch { NodeKind.Joint => "joint", NodeKind.CopyJoint => "copied joint", NodeKind.Control => "control", NodeKind.Group => "group", _ => "node" },
            node.Parent.TryKnown(out var parent) && parent is not null ? Name(parent) : null,
            node.IsExported && node.Role.TryKnown(out var role) ? role.ToString().ToLowerInvariant() : null,
            isPlaced ? [Rounded(world.Origin.X), Rounded(world.Origin.Y), Rounded(world.Origin.Z)] : null,
            isPlaced ? [Rounded(turn.X), Rounded(turn.Y), Rounded(turn.Z), Rounded(turn.W)] : null,
            node.Kind == NodeKind.Control && node.Locked.TryKnown(out var locked) ? (Channels.All & ~locked).ToString() : null,
            [.. node.Limits.OrderBy(limit => !limit.Turns).ThenBy(limit => limit.Axis.ToString(), StringComparer.Ordinal).Select(Limit)],
            [.. Settings(node)],
            null);
    }

    private static SheetLimit Limit(ChannelLimit limit) => limit.Turns
        ? new($"Turn{limit.Axis}", null, null, Number(limit.From), Number(limit.To))
        : new($"Move{limit.Axis}", Number(limit.From), Number(limit.To), null, null);

    private IEnumerable<SheetSetting> Settings(RigNode node) => model.Switches.Where(made => made.Control == node).Select(made => new SheetSetting(SheetSetting.Switch, made.Name.ToString(), Number(made.AtRest), null, null, null, null))
        .Concat(model.Dials.Where(made => made.Control == node).Select(made => new SheetSetting(SheetSetting.Dial, made.Name.ToString(), Number(made.AtRest), Number(made.From), Number(made.To), made.Unit.ToString().ToLowerInvariant(), null)))
        .Concat(model.Choices.Where(made => made.Control == node).Select(made => new SheetSetting(SheetSetting.Choice, made.Name.ToString(), null, null, null, null, [.. made.Options.Select(option => option.Name.ToString())])));

    /// <summary>The labels that go with a node; those that stand in the world, or go with nobody knows what, where none is given.</summary>
    private IEnumerable<SheetNode> LabelsUnder(RigNode? node) => model.Labels
        .Where(label => (label.Parent.TryKnown(out var parent) ? parent : null) == node)
        .Select(label => new SheetNode(names[label.Id], "label", node is null ? null : Name(node), null, null, null, null, [], [], label.Shows.ToString()));

    /// <summary>The number that was said, not the double beside its float; null for none.</summary>
    private static double? Number(Fact<float> number) => number.TryKnown(out var known) && float.IsFinite(known) ? double.Parse(Invariant.Print(known), CultureInfo.InvariantCulture) : null;

    private void AddDrives()
    {
        foreach (var drive in model.Drives)
        {
            foreach (var source in drive.Sources)
            {
                Add(drive.Target, source.Way == DriveWay.Matrix ? "by matrix" : "by channels", [Source(source.Source)], Joined(
                    drive.KeepsOffset.TryKnown(out var keeps) && keeps ? "keeping its offset" : null,
                    drive.WritesScale.TryKnown(out var scales) && scales ? "with scale" : null,
                    drive.Writes.TryKnown(out var only) && only is { } channels ? $"writing {channels}" : null));
            }
        }
    }

    private void AddBlends()
    {
        foreach (var blend in model.Blends)
        {
            if (blend.Chain?.Joints is not { } joints)
            {
                Add(blend.Node, "blend", [.. blend.Sources.Select(source => Source(source.Node, weight: Weight(source.Weight)))], null);
                continue;
            }

            foreach (var (index, joint) in joints.Index())
                Add(joint, "blend", [.. blend.Sources.Select(source => Source(source.Copy?.Joints.ElementAtOrDefault(index) ?? source.Node, weight: Weight(source.Weight)))], null);
        }

        foreach (var space in model.Spaces)
            Add(space.Control, "space", [.. space.Parents.Select(parent => Source(parent.Node, $"in {parent.Option?.Name}"))], null);
    }

    private void AddSolvers()
    {
        foreach (var solver in model.TwoBones.Cast<RigSolver>().Concat(model.ManyBones))
        {
            var says = solver is RigTwoBone two ? Joined(
                two.Softness.TryKnown(out var soft) && soft != 0 ? $"softening {Invariant.Print(soft)} m" : null,
                two.Stretch.TryKnown(out var stretch) && stretch is not null ? $"stretching by {Weight(stretch.Weight)} to {stretch.Most} times" : null,
                two.PlaneTurn.TryKnown(out var turn) && turn is not null ? $"plane turned by {turn.Title}" : null) : null;
            foreach (var joint in solver.Copy?.Joints ?? [])
                Add(joint, solver is RigTwoBone ? "two-bone IK" : "many-bone IK", [.. Known(solver.Goal, "goal"), .. Known(solver.Pole, "pole")], says);
        }

        foreach (var curve in model.Curves)
        {
            foreach (var joint in curve.Copy?.Joints ?? [])
                Add(joint, "curve", [.. curve.Nodes.Select(node => Source(node))], curve.Stretch.TryKnown(out var stretch) && stretch is { } by ? $"stretching by {Weight(by)}" : null);
        }
    }

    private void AddTurns()
    {
        foreach (var aim in model.Aims)
        {
            var up = aim.Up.TryKnown(out var found) ? found : null;
            Add(aim.Node, "aim", [.. Known(aim.Target, "target"), .. up is null ? Array.Empty<SheetSource>() : [Source(up.Node, "up")]], aim.Along.TryKnown(out var along) && along is { } axis ? $"along {axis}" : null);
        }

        foreach (var twist in model.Twists)
        {
            var ends = twist.Ends.TryKnown(out var found) ? found : null;
            foreach (var joint in twist.Joints ?? [])
                Add(joint, "twist", ends is null ? [] : [Source(ends.Start, "start"), Source(ends.End, "end")], twist.Shares.TryKnown(out var shares) && shares is not null ? $"shares {shares.First} to {shares.Last}" : null);
        }

        foreach (var falloff in model.Falloffs)
        {
            foreach (var joint in falloff.Joints ?? [])
                Add(joint, "falloff", [.. Known(falloff.Source, null)], falloff.Shares.TryKnown(out var shares) && shares is not null ? $"shares {shares.First} to {shares.Last}, {shares.Total} together" : null);
        }
    }

    private void AddResponses()
    {
        foreach (var response in model.Responses)
        {
            var source = response.Source switch
            {
                RigSetting setting => new SheetSource(Name(setting), null, null),
                RigMeasure { Node: { } node } measure => new SheetSource(Name(node), $"angle about {measure.Axis}", null),
                _ => new SheetSource(Text.Hole, null, null),
            };
            var keys = string.Join(", ", response.Keys.Select(key => $"{key.At}: {key.Value}{Slope(key)}")) + (response.IsContinued.TryKnown(out var goesOn) && goesOn ? ", going on beyond" : "");
            foreach (var target in response.Targets)
            {
                var of = target.Node is { } node ? Name(node) : $"morph {target.Morph.Mesh}.{target.Morph.Target}";
                relations.Add(new SheetRelation(of, target.Node is null ? "response" : $"response, {target.Way.ToString().ToLowerInvariant()} {target.Axis}", [source], keys));
            }
        }
    }

    private static string Slope(ResponseKey key) => key.Slope.TryKnown(out var slope) && slope is { } given ? $" (slope {Invariant.Print(given)})" : "";

    private void AddLabels()
    {
        foreach (var label in model.Labels)
        {
            if (!label.ShownBy.TryKnown(out var weight))
                relations.Add(new SheetRelation(names[label.Id], "shown by", [new SheetSource(Text.Hole, null, null)], null));
            else if (weight is { Switches: var by })
                relations.Add(new SheetRelation(names[label.Id], "shown by", [.. by.Select(variable => Shower(variable, weight))], by.Count == 1 && weight.Terms.Count <= 2 ? null : Weight(weight)));
        }
    }

    /// <summary>What shows a label: a switch or its inverse, or the option of a choice.</summary>
    private SheetSource Shower(int variable, WeightPolynomial weight) =>
        model.OptionOf(variable) is { } option ? new(Name(option.Choice), option.Name.ToString(), null)
        : model.SwitchOf(variable) is { } sw ? new(Name(sw), weight.Equals(WeightPolynomial.Variable(variable).Inverse) ? "inverse" : null, null)
        : new(Text.Hole, null, null);

    private void Add(RigNode? of, string how, IReadOnlyList<SheetSource> sources, string? says) => relations.Add(new SheetRelation(Name(of), how, sources, says));

    private IEnumerable<SheetSource> Known(Fact<RigNode?> node, string? role) => node.TryKnown(out var found) ? found is null ? [] : [Source(found, role)] : [Source(null, role)];

    private SheetSource Source(RigNode? node, string? role = null, string? weight = null) => new(Name(node), role, weight);

    private string Weight(Fact<WeightPolynomial> weight) => weight.TryKnown(out var known) ? Weight(known) : Text.Hole;

    private string Weight(WeightPolynomial weight)
    {
        var printed = weight.Print(NameOf);
        return printed.Contains(' ', StringComparison.Ordinal) ? $"({printed})" : printed;
    }

    private string NameOf(int variable) => model.SwitchOf(variable) is { } sw ? Name(sw)
        : model.OptionOf(variable) is { } option ? $"{Name(option.Choice)}={option.Name}"
        : Text.Hole;

    private string Name(RigSetting setting) => $"{Name(setting.Control)}.{setting.Name}";

    private string Name(RigNode? node) => node is not null && names.TryGetValue(node.Id, out var name) ? name : Text.Hole;

    private static string? Joined(params ReadOnlySpan<string?> parts) => string.Join(", ", parts.ToArray().Where(part => part is not null)) is { Length: > 0 } text ? text : null;

    /// <summary>A micrometre is more than a reviewer can see; what is below it would make files differ that say the same.</summary>
    private static double Rounded(double value) => double.Parse(value.ToString("F6", CultureInfo.InvariantCulture), CultureInfo.InvariantCulture) + 0.0;
}
