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
    public static IReadOnlyList<string> Lines(RigModel model, Func<PlaceId, CodeLine?> lineOf)
    {
        string At(PlaceId place) => lineOf(place) is { } line ? " @ " + line : "";
        string Node(RigNode? node) => node is null ? "none" : $"#{node.Id} {node.Name}";
        string Ask<T>(Fact<T> fact, Func<T, string> print) => fact.TryKnown(out var value) ? print(value) : Text.Hole;
        string Weigh(Fact<WeightPolynomial> weight) => Ask(weight, value => value.ToString());
        string Place(Placement? placement) => placement switch
        {
            null => "its parent",
            AtNode at => Node(at.Target),
            AtSpot at => $"spot #{at.Spot.Id}",
            _ => throw new InvalidOperationException("An unknown kind of placement."),
        };

        var lines = new List<string>();
        lines.AddRange(model.Skeletons.Select(s => $"skeleton #{s.Id} {s.Name}{At(s.Place)}"));
        lines.AddRange(model.Nodes.Select(n =>
            $"{n.Kind} #{n.Id} {n.Name} under {Ask(n.Parent, Node)}{At(n.ParentPlace)} placed at {Ask(n.Placement, Place)}"
            + $" locked {n.Locked} role {(n.IsExported ? n.Role.ToString() : "-")} rest {(n.IsExported ? n.Rest.ToString() : "-")}"
            + $" copies {Node(n.Original)} limits {(n.LimitsAreOpen ? Text.Hole : "")}{string.Join(" ", n.Limits.Select(l => $"{(l.Turns ? "turn" : "move")} {l.Axis} {l.From} to {l.To}"))}"
            + $"{(n.IsUnknown ? " unknown" : "")} scope {n.Scope}{At(n.Place)}"));
        lines.AddRange(model.Chains.Select(c => $"chain #{c.Id} {(c.Joints is null ? Text.Hole : string.Join(", ", c.Joints.Select(Node)))} bends {c.Bend}{At(c.Place)}"));
        lines.AddRange(model.Copies.Select(c => $"copy #{c.Id} {c.Tag} of #{c.Chain.Id}: {string.Join(", ", c.Joints.Select(Node))}{At(c.Place)}"));
        lines.AddRange(model.Drives.Select(d =>
            $"drive #{d.Id} of {Node(d.Target)} {string.Join(" ", d.Sources.Select(s => $"by {s.Way} {Node(s.Source)} certain {s.IsCertain}{At(s.Place)}"))} offset {d.KeepsOffset} scale {d.WritesScale}{At(d.Place)}"));
        lines.AddRange(model.Blends.Select(b =>
            $"blend #{b.Id} of {(b.Chain is null ? Node(b.Node) : "#" + b.Chain.Id)}{(b.SourcesAreOpen ? " " + Text.Hole : "")} {string.Join(" ", b.Sources.Select(s => $"from {(s.Copy is null ? Node(s.Node) : "#" + s.Copy.Id)} {Weigh(s.Weight)}{At(s.Place)}"))}{At(b.Place)}"));
        lines.AddRange(model.TwoBones.Select(t => $"two bones #{t.Id} of #{t.Copy?.Id} goal {Ask(t.Goal, Node)} pole {Ask(t.Pole, Node)}{At(t.Place)}"));
        lines.AddRange(model.Switches.Select(s =>
            $"switch #{s.Id} {s.Name} on {Node(s.Control)} also {string.Join(", ", s.AlsoOn.Select(Node))}{(s.PlacesAreOpen ? Text.Hole : "")} at rest {s.AtRest}{At(s.Place)}"));
        lines.AddRange(model.Labels.Select(l =>
            $"label #{l.Id} {l.Name} '{l.Shows}' under {Ask(l.Parent, Node)} shown by {Ask(l.ShownBy, w => w?.ToString() ?? "none")}{At(l.Place)}"));
        lines.AddRange(model.Acceptances.Select(a => $"accepted {a.Rule} on #{a.Element?.Id} because {a.Because}{At(a.Place)}"));
        lines.AddRange(model.Gaps.Select(g => $"gap {g.Reason}{At(g.Place)}"));
        return lines;
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

    private static bool AreEqual(string a, string b)
    {
        if (a == b)
            return true;
        if (Number.Replace(a, "0") != Number.Replace(b, "0"))
            return false;
        var ours = Number.Matches(a).Cast<Match>().Select(match => double.Parse(match.Value, CultureInfo.InvariantCulture));
        var theirs = Number.Matches(b).Cast<Match>().Select(match => double.Parse(match.Value, CultureInfo.InvariantCulture));
        return ours.Zip(theirs, (x, y) => Math.Abs(x - y) <= Rounding * Math.Max(1, Math.Max(Math.Abs(x), Math.Abs(y)))).All(same => same);
    }
}
