using System.Numerics;
using System.Runtime.InteropServices;

namespace Condyle.Runtime.Gltf.Writing;

/// <summary>A clip must be writable before a byte is laid out.</summary>
internal static class ClipChecks
{
    /// <summary>Float rounding passes; the standard's validator is more patient.</summary>
    private const float LengthTolerance = 1e-3f;

    public static void Check(string file, GltfClip clip, IReadOnlyList<string?> nodeNames)
    {
        if (string.IsNullOrWhiteSpace(clip.Name))
            throw new BadInputException(file, "a clip has no name", "Name the clip");
        CheckTimes(file, clip);
        var taken = new HashSet<(int, string)>();
        foreach (var track in clip.Tracks)
        {
            if (track.Node < 0 || track.Node >= nodeNames.Count)
                throw Wrong(file, clip, null, $"moves node {track.Node}, but the file has {nodeNames.Count}", "Bake the clip for this file's skeleton");
            var node = nodeNames[track.Node] ?? $"node_{track.Node}";
            CheckValues(track.Translations, track.TranslationKeys, "translation", node, track.Node);
            CheckValues(track.Rotations, track.RotationKeys, "rotation", node, track.Node);
            CheckValues(track.Scales, track.ScaleKeys, "scale", node, track.Node);
            CheckValues(track.Weights, null, "weights", node, track.Node, each: track.Weights is { } weights ? Math.Max(1, weights.Length / clip.Times.Length) : 1);
            CheckRotations(file, clip, track, node);
        }
        if (taken.Count == 0)
            throw Wrong(file, clip, null, "moves nothing, which glTF can't say", "Keep at least one track");

        void CheckValues<T>(T[]? values, int[]? keys, string path, string node, int index, int each = 1) where T : unmanaged
        {
            if (values is null)
                return;
            if (!taken.Add((index, path)))
                throw Wrong(file, clip, node, $"has two tracks for the {path}", "Keep one of them");
            if (values.Length != (keys?.Length ?? clip.Times.Length) * each)
                throw Wrong(file, clip, node, $"has {values.Length} values of the {path} for {keys?.Length ?? clip.Times.Length} times", "Give one value a time");
            if (keys is not null && !AreIndices(keys, clip.Times.Length))
                throw Wrong(file, clip, node, $"has keys of the {path} that aren't at some of the clip's times", "Give increasing indices of its times");
            if (FirstNotFinite(MemoryMarshal.Cast<T, float>(values)) is var at and >= 0)
                throw Wrong(file, clip, node, $"has a NaN or infinity in the {path} of key {at * values.Length / MemoryMarshal.Cast<T, float>(values).Length}", "Mend the motion");
        }
    }

    private static bool AreIndices(int[] keys, int times) =>
        keys.Length > 0 && keys[0] >= 0 && keys[^1] < times && keys.Zip(keys.Skip(1)).All(pair => pair.First < pair.Second);

    private static void CheckTimes(string file, GltfClip clip)
    {
        if (clip.Times.Length == 0)
            throw Wrong(file, clip, null, "has no times", "Give at least one time");
        var before = float.NegativeInfinity;
        foreach (var (key, time) in clip.Times.Index())
        {
            if (!float.IsFinite(time) || time < 0 || time <= before)
                throw Wrong(file, clip, null, $"has the time {time:R} s at key {key}", "Times start at zero or later and increase");
            before = time;
        }
    }

    private static void CheckRotations(string file, GltfClip clip, GltfTrack track, string node)
    {
        if (track.Rotations is not { } rotations)
            return;
        for (var key = 0; key < rotations.Length; key++)
        {
            if (Math.Abs(rotations[key].LengthSquared() - 1) > LengthTolerance)
                throw Wrong(file, clip, node, $"has a rotation of length {rotations[key].Length():0.####} at key {key}", "Rotations are unit quaternions");
        }
    }

    /// <summary>x · 0 is zero for finite x and NaN for all others, so whole vectors are asked at once.</summary>
    private static int FirstNotFinite(ReadOnlySpan<float> values)
    {
        var sum = Vector<float>.Zero;
        var wide = MemoryMarshal.Cast<float, Vector<float>>(values);
        foreach (var lane in wide)
            sum += lane * Vector<float>.Zero;
        var from = wide.Length * Vector<float>.Count;
        if (Vector.Sum(sum) != 0)
            from = 0;
        for (var i = from; i < values.Length; i++)
        {
            if (!float.IsFinite(values[i]))
                return i;
        }
        return -1;
    }

    private static BadInputException Wrong(string file, GltfClip clip, string? node, string problem, string remedy) =>
        new(file, problem, remedy, node, $"clip '{clip.Name}'");
}
