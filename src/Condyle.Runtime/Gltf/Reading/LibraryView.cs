using System.Text.Json.Nodes;
using System.Text.RegularExpressions;

namespace Condyle.Runtime.Gltf.Reading;

/// <summary>
/// A file's JSON without what would stop the library although it harms nobody: empty lists and nulls where the standard wants nothing at all,
/// extensions that only say how meshes and pictures are stored or that the file doesn't declare, and tracks that point to something else than a node's channels. The file itself keeps them.
/// </summary>
internal static partial class LibraryView
{
    /// <summary>Takes it all out of this tree.</summary>
    public static JsonObject Of(JsonObject json)
    {
        var declared = new[] { "extensionsUsed", "extensionsRequired" }
            .SelectMany(list => json[list] as JsonArray ?? []).OfType<JsonValue>().Select(name => name.TryGetValue(out string? text) ? text : "").ToHashSet(StringComparer.Ordinal);
        if (json["extensionsRequired"] is JsonArray required)
            required.RemoveAll(name => name is JsonValue value && value.TryGetValue(out string? text) && AboutLooks().IsMatch(text));
        foreach (var animation in (json["animations"] as JsonArray ?? []).OfType<JsonObject>())
            (animation["channels"] as JsonArray)?.RemoveAll(channel => channel?["target"] is JsonObject target && target["path"] is JsonValue path && path.TryGetValue(out string? text) && text == "pointer");
        Tidy(json, declared);
        return json;
    }

    private static void Tidy(JsonNode? node, HashSet<string> declared)
    {
        if (node is JsonArray list)
        {
            foreach (var item in list)
                Tidy(item, declared);
        }

        foreach (var (name, value) in (node as JsonObject)?.ToList() ?? [])
        {
            if (name == "extensions" && value is JsonObject extensions)
            {
                foreach (var undeclared in extensions.Select(extension => extension.Key).Where(key => !declared.Contains(key)).ToList())
                    extensions.Remove(undeclared);
            }

            if (name is "extras" or "extensions")
                continue;
            Tidy(value, declared);
            if (value is null or JsonArray { Count: 0 })
                ((JsonObject)node!).Remove(name);
        }
    }

    [GeneratedRegex("^[A-Z0-9]+_(materials|texture|lights|draco_mesh)_")]
    private static partial Regex AboutLooks();
}
