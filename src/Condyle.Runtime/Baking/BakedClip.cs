using System.Numerics;

namespace Condyle.Runtime;

/// <summary>A clip as an engine reads it: samples of the exported joints' own translation, rotation and scale.</summary>
/// <param name="Name">The clip's name.</param>
/// <param name="Times">The frames' times: seconds, from zero up, increasing. The last one is the clip's length, whether or not a whole frame ends there.</param>
/// <param name="Tracks">What moves. A channel that stays at the joint's rest for the whole clip has no values.</param>
/// <param name="Report">How the baked motion compares with the live motion.</param>
public sealed record BakedClip(string Name, IReadOnlyList<float> Times, IReadOnlyList<BakedTrack> Tracks, BakeReport Report);

/// <summary>The motion of one exported joint: for each channel null (it stays at rest), or one value a frame, read linearly (rotations by slerp) between frames.</summary>
/// <param name="Joint">The joint's index in <see cref="CompiledRig.Joints"/>.</param>
/// <param name="Translations">Metres, in the parent's space.</param>
/// <param name="Rotations">Unit quaternions; a frame's and the next one's never have opposite signs, so that every player takes the short way.</param>
/// <param name="Scales">Factors along the joint's own axes.</param>
public sealed record BakedTrack(int Joint, Vector3[]? Translations, Quaternion[]? Rotations, Vector3[]? Scales);
