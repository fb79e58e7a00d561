using System.Text.Json.Nodes;

namespace Condyle.Runtime.Gltf.Reading;

/// <summary>
/// The humanoid bones that a file's <c>VRMC_vrm</c> extension maps to nodes (VRM 1.0, section "Humanoid"), or that the nodes' extras name: a file of nodes and skins alone has no extensions.
/// </summary>
internal static class HumanBones
{
    /// <summary>The member of a node's extras that says which bone it is.</summary>
    public const string Extra = "condyleHumanBone";

    /// <summary>The node of each bone that the file names.</summary>
    /// <exception cref="BadInputException">A bone points at no node, or two at one.</exception>
    public static IReadOnlyDictionary<string, int> Of(JsonSpot root, int nodes)
    {
        var found = new Dictionary<string, int>(StringComparer.Ordinal);
        if (Inside(root["extensions"], "VRMC_vrm", "humanoid", "humanBones") is not { } bones)
            return OfExtras(root["nodes"].Items);
        var boneOf = new Dictionary<int, string>();
        foreach (var (bone, _) in bones.AsObject())
        {
            var index = bones[bone]["node"];
            var node = index.IndexInto(nodes, "nodes");
            if (!boneOf.TryAdd(node, bone))
                throw index.Wrong($"makes one node both '{boneOf[node]}' and '{bone}'", "Give each humanoid bone its own node");
            found[bone] = node;
        }

        return found;
    }

    private static Dictionary<string, int> OfExtras(JsonSpot[] nodes)
    {
        var found = new Dictionary<string, int>(StringComparer.Ordinal);
        foreach (var (node, spot) in nodes.Index())
        {
            if (spot["extras"].Value is JsonObject extras && extras[Extra] is JsonValue value && value.TryGetValue(out string? bone) && !found.TryAdd(bone, node))
                throw spot["extras"][Extra].Wrong($"makes a second node '{bone}'", "Give each humanoid bone one node");
        }

        return found;
    }

    private static JsonSpot? Inside(JsonSpot spot, params ReadOnlySpan<string> members)
    {
        foreach (var member in members)
        {
            if (spot.Value is not JsonObject)
                return null;
            spot = spot[member];
        }

        return spot.Exists ? spot : null;
    }
}
