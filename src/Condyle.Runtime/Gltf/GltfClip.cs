using System.Numerics;
using System.Text.Json.Nodes;

namespace Condyle.Runtime.Gltf;

/// <summary>A clip as it is written to a glTF file: every track has one value at each of the same times or at some of them, read linearly (rotations by slerp) between them.</summary>
/// <param name="Name">The animation's name; not empty.</param>
/// <param name="Times">Seconds, from zero up, strictly increasing, at least one.</param>
/// <param name="Tracks">What moves; at least one value array in all, no channel of a node twice.</param>
public sealed record GltfClip(string Name, float[] Times, IReadOnlyList<GltfTrack> Tracks)
{
    /// <summary>The animation's extras; none when null.</summary>
    public JsonObject? Extras { get; init; }
}

/// <summary>The motion of one node's channels: each array is null (the channel keeps its rest) or holds one value for each of its keys.</summary>
/// <param name="Node">The node's index in the file.</param>
/// <param name="Translations">Metres, in the parent's space.</param>
/// <param name="Rotations">Unit quaternions; neighbours should have the same sign, so that players take the short way.</param>
/// <param name="Scales">Factors.</param>
public sealed record GltfTrack(int Node, Vector3[]? Translations = null, Quaternion[]? Rotations = null, Vector3[]? Scales = null)
{
    /// <summary>The weights of the node's morph targets: all of them for the first of the clip's times, then for the next; null when they keep their rest.</summary>
    public float[]? Weights { get; init; }

    /// <summary>At which of the clip's times the translations stand: indices, increasing, from the first time to the last; at every time when null.</summary>
    public int[]? TranslationKeys { get; init; }

    /// <summary>The same of the rotations.</summary>
    public int[]? RotationKeys { get; init; }

    /// <summary>The same of the scales.</summary>
    public int[]? ScaleKeys { get; init; }
}
