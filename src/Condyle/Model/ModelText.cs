using System.Globalization;
using System.Text.RegularExpressions;

namespace Condyle.Model;

/// <summary>A model written out, a line an element, for comparing two of them.</summary>
internal static class ModelText
{
    /// <summary>How far two numbers may lie apart, relative to the larger, when compiler and program run on different runtimes.</summary>
    public const double Rounding = 1e-6;

    private static readonly Regex Number = new(@"-?\d+(\.\d+)?(E[+-]?\d+)?", RegexOptions.CultureInvariant);

    /// <summary>One line an element: all that the model says of it, and the line of code it came from.</summary>
    public static IReadOnlyList<string> Lines(RigModel model, Func<PlaceId, CodeLine?> lineOf) =>
        [.. Elements(model, lineOf).Select(element => $"{element.Kind} {(element.Id < 0 ? "" : $"#{element.Id} ")}{string.Join(" ", element.Facts.Where(fact => fact.Length > 0))}")];

    /// <summary>Whether nothing in a model is open.</summary>
    public static bool IsAllKnown(RigModel model) =>
        model.IsWhole && Elements(model, _ => null).All(element => element.Facts.All(fact => fact != "unknown" && fact.IndexOf(Text.Hole, StringComparison.Ordinal) < 0));

    /// <summary>All that the model says, element by element and fact by fact; what is open has a hole.</summary>
    public static IEnumerable<ModelElement> Elements(RigModel model, Func<PlaceId, CodeLine?> lineOf)
    {
        string At(PlaceId place) => lineOf(place) is { } line ? "@ " + line : "";
        string Node(RigNode? node) => node is null ? "none" : $"#{node.Id} {node.Name}";
        string Ask<T>(Fact<T> fact, Func<T, string> print) => fact.TryKnown(out var value) ? print(value) : Text.Hole;
        string Weigh(Fact<WeightPolynomial> weight) => Ask(weight, value => value.ToString());
        string Place(Placement? placement) => placement switch
        {
            null => "its parent",
            AtNode at => Node(at.Target),
            AsImage image => $"image of {Node(image.Of)}",
            AtSpot at => $"spot #{at.Spot.Id} {at.Spot.Text} {At(at.Spot.Place)}",
            _ => throw new InvalidOperationException("An unknown kind of placement."),
        };
        string Look(string what, string given) => given.Length == 0 ? "" : $"{what} {given}";
        string Hole(bool isOpen) => isOpen ? Text.Hole : "";
        IEnumerable<string> Shown(RigSetting setting) =>
            [setting.Name.ToString(), $"on {Node(setting.Control)}", $"also {string.Join(", ", setting.AlsoOn.Select(Node))}{Hole(setting.PlacesAreOpen)}"];
        IEnumerable<string> Unknown(RigElement element) => element.IsUnknown ? ["unknown"] : [];
        IEnumerable<string> Solver(RigSolver solver) => [$"of #{solver.Copy?.Id}", $"goal {Ask(solver.Goal, Node)}", $"pole {Ask(solver.Pole, Node)}"];
        string Stretch(BoneStretch? stretch) => stretch is null ? "none" : $"{stretch.Weight} to {stretch.Most}";
        string Limit(ChannelLimit limit) => $"{(limit.Turns ? "turn" : "move")} {limit.Axis} {limit.From} to {limit.To}";

        foreach (var skeleton in model.Skeletons)
            yield return new("skeleton", skeleton.Id, [skeleton.Name.ToString(), At(skeleton.Place)]);
        foreach (var node in model.Nodes)
        {
            yield return new(node.Kind.ToString(), node.Id, [
                node.Name.ToString(),
                $"under {Ask(node.Parent, Node)} {At(node.ParentPlace)}",
                $"placed at {Ask(node.Placement, Place)}",
                $"locked {node.Locked}",
                node.IsExported ? $"role {node.Role}" : "",
                node.IsExported ? $"rest {node.Rest}" : "",
                $"copies {Node(node.Original)}",
                $"limits {(node.LimitsAreOpen ? Text.Hole : "")}{string.Join(" ", node.Limits.Select(Limit))}",
                Look("shape", Ask(node.Outline, outline => outline?.ToString() ?? "")),
                Look("tint", Ask(node.Tint, tint => tint?.ToString() ?? "")),
                Look("layer", node.Layer.ToString()),
                node.IsUnknown ? "unknown" : "",
                $"scope {node.Scope}",
                At(node.Place)]);
        }

        foreach (var chain in model.Chains)
            yield return new("chain", chain.Id, [chain.Joints is null ? Text.Hole : string.Join(", ", chain.Joints.Select(Node)), $"bends {chain.Bend}", At(chain.Place), .. Unknown(chain)]);
        foreach (var copy in model.Copies)
            yield return new("copy", copy.Id, [$"{copy.Tag} of #{copy.Chain.Id}:", copy.Chain.Joints is null ? Text.Hole : string.Join(", ", copy.Joints.Select(Node)), At(copy.Place), .. Unknown(copy)]);
        foreach (var drive in model.Drives)
        {
            yield return new("drive", drive.Id, [
                $"of {Node(drive.Target)}",
                .. drive.Sources.Select(source => $"by {source.Way} {Node(source.Source)} certain {source.IsCertain} {At(source.Place)}"),
                $"offset {drive.KeepsOffset} scale {drive.WritesScale} writes {Ask(drive.Writes, only => only?.ToString() ?? "all")}",
                At(drive.Place)]);
        }

        foreach (var blend in model.Blends)
        {
            yield return new("blend", blend.Id, [
                $"of {(blend.Chain is null ? Node(blend.Node) : "#" + blend.Chain.Id)}",
                blend.SourcesAreOpen ? Text.Hole : "",
                .. blend.Sources.Select(source => $"from {(source.Copy is null ? Node(source.Node) : "#" + source.Copy.Id)} {Weigh(source.Weight)} {At(source.Place)}"),
                At(blend.Place)]);
        }

        foreach (var solver in model.TwoBones)
            yield return new("two bones", solver.Id, [.. Solver(solver), $"stretch {Ask(solver.Stretch, Stretch)}", $"soft {solver.Softness}", $"plane {Ask(solver.PlaneTurn, by => by is null ? "" : $"#{by.Id}")}", At(solver.Place)]);
        foreach (var solver in model.ManyBones)
        {
            yield return new("many bones", solver.Id, [
                .. Solver(solver),
                $"cones {(solver.ConesAreOpen ? Text.Hole : "")}{string.Join(", ", solver.Cones.Select(cone => $"{Node(cone.Joint)} {cone.Degrees}"))}",
                $"until {Ask(solver.End, end => end is null ? "done" : $"{end.Metres} m or {end.Rounds} rounds")}",
                At(solver.Place)]);
        }

        foreach (var curve in model.Curves)
        {
            yield return new("curve", curve.Id, [
                $"of #{curve.Copy?.Id}",
                $"through {(curve.NodesAreOpen ? Text.Hole : "")}{string.Join(", ", curve.Nodes.Select(Node))}",
                $"stretch {Ask(curve.Stretch, weight => weight?.ToString() ?? "none")}",
                At(curve.Place)]);
        }

        foreach (var aim in model.Aims)
        {
            yield return new("aim", aim.Id, [
                $"of {Node(aim.Node)}",
                $"at {Ask(aim.Target, Node)}",
                $"along {Ask(aim.Along, axis => axis?.ToString() ?? "what points there")}",
                $"up {Ask(aim.Up, up => up is null ? "none" : $"{Node(up.Node)} {Ask(up.Axis, axis => axis?.ToString() ?? "itself")}")}",
                At(aim.Place)]);
        }

        foreach (var twist in model.Twists)
        {
            yield return new("twist", twist.Id, [
                $"of {(twist.Joints is null ? Text.Hole : string.Join(", ", twist.Joints.Select(Node)))}",
                $"between {Ask(twist.Ends, ends => ends is null ? "nothing" : $"{Node(ends.Start)} and {Node(ends.End)}")}",
                $"shares {Ask(twist.Shares, shares => shares is null ? "by place" : $"{shares.First} to {shares.Last}")}",
                At(twist.Place)]);
        }

        foreach (var falloff in model.Falloffs)
        {
            yield return new("falloff", falloff.Id, [
                $"of #{falloff.Copy?.Id ?? falloff.Chain?.Id}",
                $"from {Ask(falloff.Source, Node)}",
                $"shares {Ask(falloff.Shares, shares => shares is null ? "even" : $"{shares.First} to {shares.Last}, {shares.Total} together")}",
                $"moves {falloff.Moves}",
                At(falloff.Place)]);
        }

        foreach (var turned in model.Switches)
            yield return new("switch", turned.Id, [.. Shown(turned), $"at rest {turned.AtRest}", At(turned.Place), .. Unknown(turned)]);
        foreach (var dial in model.Dials)
            yield return new("dial", dial.Id, [.. Shown(dial), $"from {dial.From} to {dial.To}", $"at rest {dial.AtRest}", $"unit {dial.Unit}", At(dial.Place)]);
        foreach (var choice in model.Choices)
            yield return new("choice", choice.Id, [.. Shown(choice), $"among {string.Join(", ", choice.Options.Select(option => $"#{option.Id} {option.Name} {At(option.Place)}"))}{Hole(choice.OptionsAreOpen)}", At(choice.Place)]);
        foreach (var measure in model.Measures)
            yield return new("angle", measure.Id, [$"of {Node(measure.Node)}", $"about {measure.Axis}", At(measure.Place)]);
        foreach (var response in model.Responses)
        {
            yield return new("response", response.Id, [
                $"to #{response.Source?.Id}",
                .. response.Keys.Select(key => $"key {key.At} {key.Value} slope {key.Slope} {At(key.Place)}"),
                Hole(response.KeysAreOpen),
                .. response.Targets.Select(target => $"onto {target.Way} {(target.Node is null ? $"{target.Morph.Mesh} {target.Morph.Target}" : $"{Node(target.Node)} {target.Axis}")} {At(target.Place)}"),
                Hole(response.TargetsAreOpen),
                $"continued {response.IsContinued}",
                At(response.Place)]);
        }

        foreach (var space in model.Spaces)
            yield return new("space", space.Id, [$"of {Node(space.Control)} by #{space.Choice?.Id}", .. space.Parents.Select(parent => $"in #{parent.Option?.Id} {Node(parent.Node)} {At(parent.Place)}"), Hole(space.ParentsAreOpen), At(space.Place)]);

        foreach (var label in model.Labels)
            yield return new("label", label.Id, [label.Name.ToString(), $"'{label.Shows}'", $"under {Ask(label.Parent, Node)}", $"shown by {Ask(label.ShownBy, weight => weight?.ToString() ?? "none")}", At(label.Place)]);
        foreach (var acceptance in model.Acceptances)
            yield return new("accepted", -1, [acceptance.Rule.ToString(), $"on #{acceptance.Element?.Id}", $"because {acceptance.Because}", At(acceptance.Place)]);
        foreach (var gap in model.Gaps)
            yield return new("gap", -1, [gap.Reason, At(gap.Place)]);
    }

    /// <summary>The lines in which two models differ; numbers may differ within <see cref="Rounding"/>.</summary>
    public static IReadOnlyList<string> Differences(IReadOnlyList<string> left, IReadOnlyList<string> right)
    {
        var differences = new List<string>();
        for (var i = 0; i < Math.Max(left.Count, right.Count); i++)
        {
            var a = i < left.Count ? left[i] : "(nothing)";
            var b = i < right.Count ? right[i] : "(nothing)";
            if (!AreEqual(a, b))
                differences.Add($"- {a}{Environment.NewLine}+ {b}");
        }

        return differences;
    }

    /// <summary>Whether two texts are the same; numbers may differ within <see cref="Rounding"/>.</summary>
    public static bool AreEqual(string a, string b)
    {
        if (a == b)
            return true;
        if (Number.Replace(a, "0") != Number.Replace(b, "0"))
            return false;
        return Number.Matches(a).Cast<Match>().Zip(Number.Matches(b).Cast<Match>(), (x, y) => AreClose(x.Value, y.Value)).All(close => close);
    }

    // Whole numbers are counts and parts of names: nothing rounds them.
    private static bool AreClose(string ours, string theirs)
    {
        if (ours == theirs || (IsWhole(ours) && IsWhole(theirs)))
            return ours == theirs;
        var (x, y) = (double.Parse(ours, CultureInfo.InvariantCulture), double.Parse(theirs, CultureInfo.InvariantCulture));
        return Math.Abs(x - y) <= Rounding * Math.Max(1, Math.Max(Math.Abs(x), Math.Abs(y)));
    }

    private static bool IsWhole(string number) => number.All(character => character is >= '0' and <= '9' or '-');
}
