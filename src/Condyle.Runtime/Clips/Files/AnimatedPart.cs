using System.Globalization;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using Condyle.Runtime.Gltf.Reading;

namespace Condyle.Runtime.Clips.Files;

/// <summary>What one track of a file's animation moves: a node's translation, rotation or scale, or a number in its extras.</summary>
internal sealed partial record AnimatedPart(int Node, string Path)
{
    /// <summary>The path of a number in a node's extras, as <c>KHR_animation_pointer</c> can point to one.</summary>
    public const string Value = "value";

    /// <summary>None where the track moves something else, or nothing.</summary>
    public static AnimatedPart? Of(JsonSpot channel, int nodes)
    {
        var target = channel["target"];
        if (target["path"].Text == "pointer")
            return OfPointer(target, nodes);
        return target["node"] is { Exists: true } node && target["path"].Text is "translation" or "rotation" or "scale"
            ? new AnimatedPart(target["node"].IndexInto(nodes, "nodes"), target["path"].Text!)
            : null;
    }

    private static AnimatedPart? OfPointer(JsonSpot target, int nodes)
    {
        if (target["extensions"].Value is not JsonObject extensions || extensions["KHR_animation_pointer"] is not JsonObject extension
            || extension["pointer"] is not JsonValue value || !value.TryGetValue(out string? pointer) || Pointer().Match(pointer) is not { Success: true } match)
            return null;
        var node = int.Parse(match.Groups[1].Value, CultureInfo.InvariantCulture);
        if (node >= nodes)
            throw target.Wrong($"points to node {node}, but the file has {nodes} nodes", "Export the animation again");
        return new AnimatedPart(node, match.Groups[2].Success ? match.Groups[2].Value : Value);
    }

    [GeneratedRegex("^/nodes/([0-9]{1,9})/(?:(translation|rotation|scale)|extras/condyleValue)$")]
    private static partial Regex Pointer();
}
