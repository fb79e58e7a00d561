using System.Text;
using System.Text.Json.Nodes;
using Condyle.Naming;
using Condyle.Runtime.Gltf.Reading;

namespace Condyle.Runtime.Gltf;

/// <summary>A small text file with a character's nodes and skins only, for code generation and review.</summary>
public static class SkeletonFile
{
    /// <summary>The member of a node's extras that says what it carried in the delivered file: "mesh" or "camera".</summary>
    public const string CarriesMember = "condyleCarries";

    /// <summary>
    /// The JSON of a valid <c>.gltf</c> with the nodes (indices, names, hierarchy, transforms and extras as delivered), the scenes and the skins
    /// (joints and root). Meshes, cameras, inverse bind matrices, extensions and buffers are gone; a node that carried a mesh or camera, or that is a humanoid bone of VRM 1.0, says so in its extras.
    /// </summary>
    public static string Extract(GltfFile file)
    {
        var delivered = file.ParseJson();
        var skeleton = new JsonObject { ["asset"] = Only(delivered["asset"]!, "version", "minVersion", "generator", "copyright", "extras") };
        if (delivered["scene"] is { } scene)
            skeleton["scene"] = scene.DeepClone();
        AddList("scenes", item => Only(item, "name", "nodes", "extras"));
        AddList("nodes", Node);
        var nodes = skeleton["nodes"] as JsonArray ?? [];
        foreach (var (bone, node) in HumanBones.Of(new JsonSpot(file.Path, "", delivered), nodes.Count))
            Extras(nodes[node]!.AsObject())[HumanBoneClaims.Extra] = bone;
        AddList("skins", item => Only(item, "name", "joints", "skeleton", "extras"));
        return Encoding.UTF8.GetString(JsonText.Readable(skeleton)) + "\n";

        void AddList(string name, Func<JsonNode, JsonObject> shorten)
        {
            if (delivered[name] is JsonArray { Count: > 0 } list)
                skeleton[name] = new JsonArray([.. list.Select(item => shorten(item!))]);
        }
    }

    private static JsonObject Node(JsonNode delivered)
    {
        var node = Only(delivered, "name", "children", "translation", "rotation", "scale", "matrix", "extras");
        var carried = delivered["mesh"] is not null ? "mesh" : delivered["camera"] is not null ? "camera" : null;
        if (carried is null)
            return node;
        Extras(node)[CarriesMember] = carried;
        return node;
    }

    private static JsonObject Extras(JsonObject node)
    {
        if (node["extras"] is not JsonObject extras)
            node["extras"] = extras = [];
        return extras;
    }

    private static JsonObject Only(JsonNode source, params ReadOnlySpan<string> members)
    {
        var kept = new JsonObject();
        foreach (var (name, value) in source.AsObject())
        {
            if (members.Contains(name))
                kept[name] = value?.DeepClone();
        }
        return kept;
    }
}
