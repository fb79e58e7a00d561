using System.Text;
using Condyle.Model;

namespace Condyle.Host.Sheets;

/// <summary>A rig as a tree in lines: what hangs under what, and what moves it.</summary>
internal static class SheetText
{
    public static string Of(RigSheet sheet)
    {
        var text = new StringBuilder();
        var (depths, relations) = (Depths(sheet), sheet.Relations.ToLookup(relation => relation.Of, StringComparer.Ordinal));
        foreach (var node in sheet.Nodes)
        {
            var indent = new string(' ', 2 * (depths[node.Name] + 1));
            Add($"{indent}{node.Name}  {node.Kind}{(Says(node) is { Count: > 0 } says ? $"  [{string.Join("; ", says)}]" : "")}");
            foreach (var relation in relations[node.Name])
                Add($"{indent}    <- {Line(relation)}");
        }

        var names = sheet.Nodes.Select(node => node.Name).ToHashSet(StringComparer.Ordinal);
        foreach (var relation in sheet.Relations.Where(relation => !names.Contains(relation.Of)))
        {
            Add($"  {relation.Of}");
            Add($"      <- {Line(relation)}");
        }

        return text.ToString();

        void Add(string line) => text.Append(Messages.OnOneLine(line)).Append('\n');
    }

    /// <summary>The limits of a node, moves and turns each with their word once: <c>turn X -5° to 140°, Y -10° to 10°</c>.</summary>
    public static string Limits(SheetNode node) => string.Join("; ", node.Limits
        .GroupBy(limit => limit.What(), StringComparer.Ordinal).Select(each => $"{each.Key} {string.Join(", ", each.Select(limit => limit.Range()))}"));

    /// <summary>What else a node has: settings, or what a label shows.</summary>
    public static IEnumerable<string> Has(SheetNode node) => node.Settings.Select(setting => setting.ToString()).Concat(node.Shows is { } text ? [$"shows {text}"] : []);

    private static List<string> Says(SheetNode node) => node.Limits.Count > 0 ? [Limits(node), .. Has(node)] : [.. Has(node)];

    public static string Line(SheetRelation relation) => $"{relation.How}: {string.Join(", ", relation.Sources)}{(relation.Says is null ? "" : $"; {relation.Says}")}";

    public static Dictionary<string, int> Depths(RigSheet sheet)
    {
        var depths = new Dictionary<string, int>(StringComparer.Ordinal);
        foreach (var node in sheet.Nodes)
            depths[node.Name] = node.Under is { } under && depths.TryGetValue(under, out var above) ? above + 1 : 0;
        return depths;
    }
}
