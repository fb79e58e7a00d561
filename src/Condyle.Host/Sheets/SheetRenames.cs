using System.Text.RegularExpressions;

namespace Condyle.Host.Sheets;

/// <summary>
/// The nodes that have another name in a later build. One is taken for renamed where a single node under its parent is gone and a single one is new there that is of its kind, rests where it did
/// and is moved in the same ways: where two could be meant, neither is.
/// </summary>
internal sealed class SheetRenames
{
    private readonly Dictionary<string, string> nowOf = new(StringComparer.Ordinal);
    private readonly Regex names;

    // Later in the alphabet first: what begins with another's name and goes on is tried before that.
    private SheetRenames(IEnumerable<string> were) => names = new($@"(?<![\w.])(?:{string.Join('|', were.OrderDescending(StringComparer.Ordinal).Select(Regex.Escape))})(?!\w)");

    /// <summary>The names, parents before children.</summary>
    public IEnumerable<(string Was, string Now)> All => nowOf.Select(rename => (rename.Key, rename.Value));

    public static SheetRenames Find(RigSheet before, RigSheet after)
    {
        var (known, kept) = (Names(after), Names(before));
        var renames = new SheetRenames(kept);
        var gone = before.Nodes.Where(node => !known.Contains(node.Name)).ToList();
        var alikeBefore = gone.ToLookup(node => (node.Under, Likeness(node, before)));
        var alikeAfter = after.Nodes.Where(node => !kept.Contains(node.Name)).ToLookup(node => (node.Under, Likeness(node, after)));
        foreach (var same in alikeBefore.Where(same => same.Count() == 1))
        {
            if (alikeAfter[(renames.NowOf(same.Key.Under), same.Key.Item2)].ToList() is [var now])
                renames.nowOf.Add(same.Single().Name, now.Name);
        }

        return renames;
    }

    /// <summary>The earlier build as it would be with the later one's names.</summary>
    public RigSheet ApplyTo(RigSheet before) => nowOf.Count == 0 ? before : before with
    {
        Nodes = [.. before.Nodes.Select(node => node with { Name = NowOf(node.Name)!, Under = NowOf(node.Under) })],
        Relations = [.. before.Relations.Select(relation => relation with
        {
            Of = NowOf(relation.Of)!,
            Says = InText(relation.Says),
            Sources = [.. relation.Sources.Select(source => source with { Name = InText(source.Name)!, Weight = InText(source.Weight) })],
        })],
    };

    private static HashSet<string> Names(RigSheet sheet) => [.. sheet.Nodes.Select(node => node.Name)];

    private static string Likeness(SheetNode node, RigSheet sheet) => string.Join('\n', [
        node.Kind, node.Role, node.Channels, .. (node.Place ?? []).Concat(node.Turn ?? []).Select(number => FormattableString.Invariant($"{number:F4}")), SheetText.Limits(node), .. SheetText.Has(node),
        .. sheet.Relations.Where(relation => relation.Of == node.Name).Select(relation => relation.How)]);

    private string? NowOf(string? name) => name is not null && nowOf.TryGetValue(name, out var now) ? now : name;

    /// <summary>A name by itself, or before the dot of a setting's.</summary>
    private string? InText(string? text) => text is null ? null : names.Replace(text, name => NowOf(name.Value)!);
}
