namespace Condyle.Runtime.Baking;

/// <summary>Where in a clip, and in the clips that lie over it, something happens that no frame rate can be trusted to see.</summary>
internal static class ClipMoments
{
    /// <summary>When a switch begins or ends to change, or a choice picks another option: seconds in the clip, in order.</summary>
    public static float[] Changes(Clip clip) => [.. Changes(clip, 0).Distinct().Order()];

    /// <summary>When anything has a key: seconds in the clip, in order.</summary>
    public static float[] Keys(Clip clip) => [.. Keys(clip, 0).Distinct().Order()];

    private static IEnumerable<float> Changes(Clip clip, float from) => clip.Switches.Values.SelectMany(static track => Changes(track))
        .Concat(clip.Choices.Values.SelectMany(static track => Changes(track)))
        .Select(time => time + from)
        .Concat(clip.Layers.SelectMany(layer => Changes(layer.Clip, from + layer.StartsAt)));

    private static IEnumerable<float> Keys(Clip clip, float from) => clip.Moves.Values.SelectMany(track => track.Times)
        .Concat(clip.Turned.Values.SelectMany(track => track.Times))
        .Concat(clip.Scales.Values.SelectMany(track => track.Times))
        .Concat(clip.Switches.Values.SelectMany(track => track.Times))
        .Concat(clip.Dials.Values.SelectMany(track => track.Times))
        .Concat(clip.Choices.Values.SelectMany(track => track.Times))
        .Select(time => time + from)
        .Concat(clip.Layers.SelectMany(layer => Keys(layer.Clip, from + layer.StartsAt).Concat(layer.WeightTimes.Append(0).Select(time => time + from + layer.StartsAt))));

    private static IEnumerable<float> Changes<T>(Track<T> track)
        where T : struct
    {
        for (var key = 1; key < track.Times.Count; key++)
        {
            if (track.Values[key].Equals(track.Values[key - 1]))
                continue;
            yield return track.Times[key - 1];
            yield return track.Times[key];
        }
    }
}
