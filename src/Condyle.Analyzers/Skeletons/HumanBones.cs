using System.Text.Json;

namespace Condyle.Analyzers.Skeletons;

/// <summary>Which nodes are humanoid bones, by the bone's name in VRM 1.0: as the file's extension <c>VRMC_vrm</c> maps them, or as the nodes' extras say.</summary>
internal static class HumanBones
{
    /// <summary>How a node says it by itself: a file that holds nodes and skins only has lost its extensions.</summary>
    private const string Extra = "condyleHumanBone";

    /// <exception cref="SkeletonFileException">A bone is no node, or a node is two bones.</exception>
    public static IReadOnlyDictionary<int, string> Of(JsonPlace root, IReadOnlyList<JsonPlace> nodes)
    {
        var bones = new Dictionary<int, string>();
        if (Inside(root, "extensions", "VRMC_vrm", "humanoid", "humanBones") is { } mapped)
        {
            foreach (var bone in mapped.Element.EnumerateObject())
            {
                if (mapped.Find(bone.Name) is { Element.ValueKind: JsonValueKind.Object } entry && entry.Find("node") is { } index)
                    Add(index.IndexInto(nodes.Count, "nodes"), bone.Name, index);
            }
        }

        foreach (var (node, place) in nodes.Select((place, node) => (node, place)))
        {
            if (NodeTree.Extras(place)?.Find(Extra) is { Element.ValueKind: JsonValueKind.String } bone && !bones.ContainsKey(node))
                Add(node, bone.Text(), bone);
        }

        return bones;

        void Add(int node, string bone, JsonPlace place)
        {
            if (bones.TryGetValue(node, out var other))
                throw place.Wrong($"makes one node both '{other}' and '{bone}'", "Give each humanoid bone its own node");
            if (bones.ContainsValue(bone))
                throw place.Wrong($"makes a second node '{bone}'", "Give each humanoid bone one node");
            bones.Add(node, bone);
        }
    }

    private static JsonPlace? Inside(JsonPlace root, params string[] members)
    {
        var place = root;
        foreach (var member in members)
        {
            if (place.Element.ValueKind != JsonValueKind.Object || place.Find(member) is not { } inside)
                return null;
            place = inside;
        }

        return place.Element.ValueKind == JsonValueKind.Object ? place : null;
    }
}
