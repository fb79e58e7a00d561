using System.Numerics;

namespace Condyle.Runtime;

/// <summary>A clip as an engine reads it: samples of the exported joints' own translation, rotation and scale.</summary>
/// <param name="Name">The clip's name.</param>
/// <param name="Times">The samples' times: seconds, from zero up, increasing. The last one is the length of what was baked, whether or not a whole frame ends there.</param>
/// <param name="Tracks">What moves. A channel that stays at the joint's rest for the whole clip has no values.</param>
/// <param name="Report">How the baked motion compares with the live motion.</param>
public sealed record BakedClip(string Name, IReadOnlyList<float> Times, IReadOnlyList<BakedTrack> Tracks, BakeReport Report)
{
    /// <summary>The clip's named moments that lie in what was baked, by its times.</summary>
    public IReadOnlyList<Marker> Markers { get; init; } = [];

    /// <summary>The weights of the morph targets that the rig sets, in the order of <see cref="CompiledRig.Morphs"/>: a value for each of <see cref="Times"/>, read linearly between them.</summary>
    public IReadOnlyList<float[]> Morphs { get; init; } = [];

    /// <summary>The way that was taken off the character, a value for each of <see cref="Times"/>; null unless it was.</summary>
    public RootTravel? Travel { get; init; }
}

/// <summary>The motion of one exported joint: for each channel null (it stays at rest), or one value a sample, read linearly (rotations by slerp) between them.</summary>
/// <param name="Joint">The joint's index in <see cref="CompiledRig.Joints"/>.</param>
/// <param name="Translations">Metres, in the parent's space.</param>
/// <param name="Rotations">Unit quaternions; a sample's and the next one's never have opposite signs, so that every player takes the short way.</param>
/// <param name="Scales">Factors along the joint's own axes.</param>
public sealed record BakedTrack(int Joint, Vector3[]? Translations, Quaternion[]? Rotations, Vector3[]? Scales)
{
    /// <summary>At which of the clip's times the translations stand, where keys were left out; null when there is one for each.</summary>
    public int[]? TranslationKeys { get; init; }

    /// <summary>The same of the rotations.</summary>
    public int[]? RotationKeys { get; init; }

    /// <summary>The same of the scales.</summary>
    public int[]? ScaleKeys { get; init; }
}

/// <summary>A way over the ground: where a character that moves in place would be.</summary>
/// <param name="Translations">Metres from where it rests; nothing along Y.</param>
/// <param name="Rotations">Turns about Y.</param>
public sealed record RootTravel(IReadOnlyList<Vector3> Translations, IReadOnlyList<Quaternion> Rotations);
