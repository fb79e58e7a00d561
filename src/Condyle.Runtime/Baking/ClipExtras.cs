using System.Text.Json.Nodes;

namespace Condyle.Runtime.Baking;

/// <summary>What a baked animation carries in its extras: the clip's markers, and the way that was taken off where it moves in place.</summary>
internal static class ClipExtras
{
    public const string Markers = "markers", Travel = "travel";

    public static JsonObject? Of(BakedClip clip)
    {
        var extras = new JsonObject();
        if (clip.Markers.Count > 0)
            extras[Markers] = Listed(clip.Markers);
        if (clip.Travel is { } travel)
        {
            // One number in a list for each key, as the accessors of the animation have them: time, move along the axes (along the up axis it is zero), turn about the up axis.
            extras[Travel] = new JsonObject
            {
                ["times"] = Numbers(clip.Times),
                ["x"] = Numbers(travel.Translations.Select(move => move.X)),
                ["y"] = Numbers(travel.Translations.Select(move => move.Y)),
                ["z"] = Numbers(travel.Translations.Select(move => move.Z)),
                ["degrees"] = Numbers(travel.Rotations.Select(turn => (float)(2 * Math.Atan2(turn.Y, turn.W) * (180 / Math.PI)))),
            };
        }

        return extras.Count > 0 ? extras : null;
    }

    /// <summary>Markers as animations carry them.</summary>
    public static JsonArray Listed(IReadOnlyList<Marker> markers) => [.. markers.Select(marker => new JsonObject { ["at"] = marker.At, ["name"] = marker.Name })];

    private static JsonArray Numbers(IEnumerable<float> numbers) => new([.. numbers.Select(number => (JsonNode)number)]);
}
