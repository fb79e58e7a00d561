using Condyle.Runtime.Gltf.Writing;

namespace Condyle.Runtime;

/// <summary>What was written for an engine, with the hash of each file, so that a pipeline can tell what changed. It holds no time and no machine: the same work leaves the same bytes.</summary>
/// <param name="Rig">The rig's name.</param>
/// <param name="Profile">The profile's name.</param>
/// <param name="UnitsPerMetre">How many units of the files are a metre.</param>
/// <param name="Up">The files' up axis.</param>
/// <param name="Files">The files.</param>
/// <param name="Clips">The clips, which each of the files has.</param>
public sealed record ProfileManifest(string Rig, string Profile, float UnitsPerMetre, string Up, IReadOnlyList<ProfileFile> Files, IReadOnlyList<ProfileClip> Clips)
{
    /// <summary>The manifest as it is written.</summary>
    /// <returns>Text that ends with a line break.</returns>
    public string ToJson() => ReadableJson.Text(this);
}

/// <summary>A file that was written for an engine.</summary>
/// <param name="Name">Its name, in the manifest's folder.</param>
/// <param name="Level">Its level of detail; null where there is only one.</param>
/// <param name="JointsKept">How many joints of the rig the level keeps: only they can have tracks. The file has the whole skeleton.</param>
/// <param name="Bytes">Its length.</param>
/// <param name="Sha256">The hash of its content.</param>
public sealed record ProfileFile(string Name, string? Level, int JointsKept, long Bytes, string Sha256)
{
    /// <summary>What the level leaves out, by name or pattern, that is no joint of this skeleton.</summary>
    public IReadOnlyList<string> NotInSkeleton { get; init; } = [];
}

/// <summary>A clip that was written for an engine.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Seconds">Its length.</param>
/// <param name="FramesPerSecond">Its frame rate.</param>
/// <param name="Frames">The number of samples.</param>
/// <param name="Loops">Whether it ends as it begins.</param>
/// <param name="Additive">What it is the difference from: <c>rest</c> or a time; null where it stands by itself.</param>
/// <param name="Events">Its markers.</param>
public sealed record ProfileClip(string Name, float Seconds, float FramesPerSecond, int Frames, bool Loops, string? Additive, IReadOnlyList<Marker> Events);
