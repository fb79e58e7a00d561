using System.Text.Json.Nodes;
using Condyle.Naming;

namespace Condyle.Runtime.Gltf.Reading;

/// <summary>Which nodes of a file are humanoid bones (VRM 1.0, section "Humanoid").</summary>
internal static class HumanBones
{
    /// <summary>The node of each bone that the file names.</summary>
    /// <exception cref="BadInputException">A bone is no node, or what the file says in two places doesn't agree.</exception>
    public static IReadOnlyDictionary<string, int> Of(JsonSpot root, int nodes)
    {
        var claims = new HumanBoneClaims();
        if (Mapped(root) is { } map)
        {
            foreach (var (bone, value) in map.AsObject())
            {
                if (value is null)
                    continue;
                var index = map[bone]["node"];
                if (!index.Exists)
                    throw map[bone].Wrong("names no node", "Name the node that it is");
                Add(index.IndexInto(nodes, "nodes"), bone, index);
            }
        }

        foreach (var (node, spot) in root["nodes"].Items.Index())
        {
            if (spot["extras"].Value is JsonObject extras && extras[HumanBoneClaims.Extra] is JsonValue value && value.TryGetValue(out string? bone))
                Add(node, bone, spot["extras"][HumanBoneClaims.Extra]);
        }

        return claims.Nodes;

        void Add(int node, string bone, JsonSpot spot)
        {
            if (claims.Add(node, bone) is var (problem, remedy))
                throw spot.Wrong(problem, remedy);
        }
    }

    private static JsonSpot? Mapped(JsonSpot spot)
    {
        foreach (var member in HumanBoneClaims.Map)
        {
            if (spot.Value is not JsonObject)
                return null;
            spot = spot[member];
        }

        return spot.Exists ? spot : null;
    }
}
