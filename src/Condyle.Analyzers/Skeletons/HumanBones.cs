using System.Text.Json;
using Condyle.Naming;

namespace Condyle.Analyzers.Skeletons;

/// <summary>Which nodes of a file are humanoid bones.</summary>
internal static class HumanBones
{
    /// <exception cref="SkeletonFileException">A bone is no node, or what the file says in two places doesn't agree.</exception>
    public static IReadOnlyDictionary<int, string> Of(JsonPlace root, IReadOnlyList<JsonPlace> nodes)
    {
        var claims = new HumanBoneClaims();
        if (Mapped(root) is { } map)
        {
            foreach (var member in map.Members())
            {
                if (map.Find(member) is not { } bone)
                    continue;
                var index = bone.Find("node") ?? throw bone.Wrong("names no node", "Name the node that it is");
                Add(index.IndexInto(nodes.Count, "nodes"), member, index);
            }
        }

        foreach (var (node, place) in nodes.Select((place, node) => (node, place)))
        {
            if (NodeTree.Extras(place)?.Find(HumanBoneClaims.Extra) is { Element.ValueKind: JsonValueKind.String } bone)
                Add(node, bone.Text(), bone);
        }

        return claims.Bones;

        void Add(int node, string bone, JsonPlace place)
        {
            if (claims.Add(node, bone) is var (problem, remedy))
                throw place.Wrong(problem, remedy);
        }
    }

    private static JsonPlace? Mapped(JsonPlace root)
    {
        JsonPlace? place = root;
        foreach (var member in HumanBoneClaims.Map)
            place = place is { Element.ValueKind: JsonValueKind.Object } inside ? inside.Find(member) : null;
        return place;
    }
}
