using Condyle.Evaluation;
using Condyle.Host.Reporting;

namespace Condyle.Host.Sheets;

/// <summary>Something that differs between two builds of a rig.</summary>
/// <param name="Kind">What became of it: added, removed, renamed or changed.</param>
/// <param name="What">What it is: node or drive.</param>
/// <param name="Name">Its name.</param>
/// <param name="Details">What a reviewer wants to know of it.</param>
internal sealed record SheetChange(string Kind, string What, string Name, IReadOnlyList<string> Details)
{
    public const string Added = "added", Removed = "removed", Renamed = "renamed", Changed = "changed", Node = "node", Drive = "drive";
}

/// <summary>Finds what differs between two builds of a rig, by names; what has another name now and is the same is told as that alone.</summary>
internal static class SheetComparison
{
    /// <summary>What is moved or turned by less is rounding: a hundredth of a millimetre, a thousandth of a degree.</summary>
    private const double SameMetres = 1e-5, SameDegrees = 1e-3;

    public static IReadOnlyList<SheetChange> Of(RigSheet before, RigSheet after)
    {
        var renames = SheetRenames.Find(before, after);
        var was = renames.ApplyTo(before);
        return [.. renames.All.Select(rename => new SheetChange(SheetChange.Renamed, SheetChange.Node, rename.Now, [$"was '{rename.Was}'"])), .. Nodes(was, after), .. Relations(was, after)];
    }

    private static IEnumerable<SheetChange> Nodes(RigSheet before, RigSheet after)
    {
        var old = before.Nodes.ToDictionary(node => node.Name, StringComparer.Ordinal);
        foreach (var node in after.Nodes)
        {
            if (!old.Remove(node.Name, out var was))
                yield return new(SheetChange.Added, SheetChange.Node, node.Name, [Title(node)]);
            else if (Details(was, node).ToList() is { Count: > 0 } details)
                yield return new(SheetChange.Changed, SheetChange.Node, node.Name, details);
        }

        foreach (var node in before.Nodes.Where(node => old.ContainsKey(node.Name)))
            yield return new(SheetChange.Removed, SheetChange.Node, node.Name, [Title(node)]);
    }

    private static string Title(SheetNode node) => node.Kind + (node.Role is null ? "" : $" ({node.Role})") + (node.Under is null ? "" : $" under '{node.Under}'");

    private static IEnumerable<string> Details(SheetNode was, SheetNode now)
    {
        if (was.Kind != now.Kind || was.Role != now.Role)
            yield return $"{Title(was with { Under = null })} → {Title(now with { Under = null })}";
        if (was.Under != now.Under)
            yield return $"under {Quoted(was.Under)} → under {Quoted(now.Under)}";
        foreach (var moved in RestDetails(was, now))
            yield return moved;
        if (was.Channels != now.Channels)
            yield return $"channels {was.Channels ?? "none"} → {now.Channels ?? "none"}";
        foreach (var line in Lists("limit ", was.Limits, now.Limits).Concat(Lists("", SheetText.Has(was), SheetText.Has(now))))
            yield return line;
    }

    private static IEnumerable<string> RestDetails(SheetNode was, SheetNode now)
    {
        if (was is not { Place: { } from, Turn: { } turnedFrom } || now is not { Place: { } to, Turn: { } turnedTo })
        {
            if ((was.Place is null) != (now.Place is null))
                yield return was.Place is null ? "where it rests is known now" : "where it rests isn't known any more";
            yield break;
        }

        var metres = new Vector3d(to[0] - from[0], to[1] - from[1], to[2] - from[2]).Length;
        var degrees = Quaterniond.Angle(Turned(turnedFrom), Turned(turnedTo)) * (180 / Math.PI);
        if (metres > SameMetres)
            yield return $"rest moved by {Say.Metres(metres)}";
        if (degrees > SameDegrees)
            yield return $"rest turned by {Say.Degrees(degrees)}";
    }

    private static IEnumerable<SheetChange> Relations(RigSheet before, RigSheet after)
    {
        var old = before.Relations.GroupBy(Key).ToDictionary(group => group.Key, group => group.ToList());
        foreach (var group in after.Relations.GroupBy(Key))
        {
            old.Remove(group.Key, out var were);
            var now = group.ToList();
            for (var i = 0; i < Math.Max(now.Count, were?.Count ?? 0); i++)
            {
                if (i >= now.Count)
                    yield return Gone(were![i]);
                else if (were is null || i >= were.Count)
                    yield return new(SheetChange.Added, SheetChange.Drive, now[i].Of, [Title(now[i])]);
                else if (Details(were[i], now[i]).ToList() is { Count: > 0 } details)
                    yield return new(SheetChange.Changed, SheetChange.Drive, now[i].Of, [now[i].How, .. details]);
            }
        }

        foreach (var relation in before.Relations.Where(relation => old.ContainsKey(Key(relation))))
            yield return Gone(relation);

        static SheetChange Gone(SheetRelation relation) => new(SheetChange.Removed, SheetChange.Drive, relation.Of, [Title(relation)]);
    }

    private static (string, string) Key(SheetRelation relation) => (relation.Of, relation.How);

    private static string Title(SheetRelation relation) => $"{relation.How} of {string.Join(", ", relation.Sources)}" + (relation.Says is null ? "" : $", {relation.Says}");

    private static IEnumerable<string> Details(SheetRelation was, SheetRelation now)
    {
        var old = was.Sources.ToList();
        foreach (var source in now.Sources)
        {
            var index = old.FindIndex(other => other.Name == source.Name && other.As == source.As);
            if (index < 0)
                yield return $"from {source} added";
            else if (old[index].Weight != source.Weight)
                yield return $"from {source.Name}: weight {old[index].Weight ?? "none"} → {source.Weight ?? "none"}";
            if (index >= 0)
                old.RemoveAt(index);
        }

        foreach (var gone in old)
            yield return $"from {gone} removed";
        if (was.Says != now.Says)
            yield return $"{was.Says ?? "nothing"} → {now.Says ?? "nothing"}";
    }

    private static IEnumerable<string> Lists<T>(string what, IEnumerable<T> was, IEnumerable<T> now)
    {
        var (old, @new) = (was.Select(one => $"{what}{one}").ToList(), now.Select(one => $"{what}{one}").ToList());
        return @new.Except(old).Select(line => $"{line} added").Concat(old.Except(@new).Select(line => $"{line} removed"));
    }

    private static string Quoted(string? name) => name is null ? "nothing" : $"'{name}'";

    private static Quaterniond Turned(IReadOnlyList<double> turn) => new Quaterniond(turn[0], turn[1], turn[2], turn[3]).Normalized();
}
