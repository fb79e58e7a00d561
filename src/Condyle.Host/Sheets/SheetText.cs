using System.Text;

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
            text.Append($"{indent}{node.Name}  {node.Kind}{(node.Settings.Count > 0 ? $"  [{string.Join("; ", node.Settings)}]" : "")}\n");
            foreach (var relation in relations[node.Name])
                text.Append($"{indent}    <- {Line(relation)}\n");
        }

        var names = sheet.Nodes.Select(node => node.Name).ToHashSet(StringComparer.Ordinal);
        foreach (var relation in sheet.Relations.Where(relation => !names.Contains(relation.Of)))
            text.Append($"  {relation.Of}\n      <- {Line(relation)}\n");
        return text.ToString();
    }

    public static string Line(SheetRelation relation) => $"{relation.How}: {string.Join(", ", relation.Sources)}{(relation.Says is null ? "" : $"; {relation.Says}")}";

    public static Dictionary<string, int> Depths(RigSheet sheet)
    {
        var depths = new Dictionary<string, int>(StringComparer.Ordinal);
        foreach (var node in sheet.Nodes)
            depths[node.Name] = node.Under is { } under && depths.TryGetValue(under, out var above) ? above + 1 : 0;
        return depths;
    }
}
