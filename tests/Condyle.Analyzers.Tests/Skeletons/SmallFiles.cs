namespace Condyle.Analyzers.Tests.Skeletons;

/// <summary>Skeleton files of a few nodes.</summary>
internal static class SmallFiles
{
    /// <summary>A file with these nodes and, when given, a skin with these joints.</summary>
    public static string Gltf(string nodes, string? joints = null) =>
        $$"""{"asset": {"version": "2.0"}, "nodes": [{{nodes}}]{{(joints is null ? "" : $$""", "skins": [{"joints": [{{joints}}]}]""")}}}""";

    /// <summary>Nodes of these names: the first is the root, the others hang below it.</summary>
    public static string Named(params string[] names)
    {
        var children = string.Join(", ", Enumerable.Range(1, names.Length - 1));
        var first = names.Length > 1 ? $$"""{"name": "{{names[0]}}", "children": [{{children}}]}""" : $$"""{"name": "{{names[0]}}"}""";
        return string.Join(", ", [first, .. names.Skip(1).Select(name => $$"""{"name": "{{name}}"}""")]);
    }
}
