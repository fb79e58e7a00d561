using Condyle.Runtime.Gltf;
using Condyle.Runtime.Profiles;

namespace Condyle.Runtime;

/// <summary>Writes the motion of a rig for an engine: a file for each level of detail, and a manifest.</summary>
public static class ProfileBaker
{
    /// <summary>Bakes clips for an engine.</summary>
    /// <param name="rig">The rig.</param>
    /// <param name="skeletonFile">The file that its skeleton was delivered in.</param>
    /// <param name="clips">The clips, each with its own name.</param>
    /// <param name="profile">What the engine takes.</param>
    /// <param name="folder">Where the files are written: <c>name.profile.glb</c> or <c>name.profile.level.glb</c>, and last <c>name.profile.json</c>, the manifest. What a manifest there tells of an earlier bake and isn't written now is removed, if it lies there as it was written.</param>
    /// <param name="name">What the files' names begin with; the rig's name in small letters when null.</param>
    /// <param name="progress">Told how far each clip is.</param>
    /// <param name="cancellation">Stops the bake between frames; nothing is written then.</param>
    /// <returns>The manifest, and how each clip's baked motion compares with the live motion.</returns>
    /// <exception cref="BadInputException">A file, a clip or the profile can't be used, or a file can't be written.</exception>
    public static (ProfileManifest Manifest, IReadOnlyList<BakeReport> Reports) Write(
        CompiledRig rig, string skeletonFile, IReadOnlyList<Clip> clips, EngineProfile profile, string folder, string? name = null, IProgress<BakeProgress>? progress = null, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(rig);
        ArgumentNullException.ThrowIfNull(skeletonFile);
        ArgumentNullException.ThrowIfNull(clips);
        ArgumentNullException.ThrowIfNull(profile);
        ArgumentNullException.ThrowIfNull(folder);
        return new ProfileWriter(rig, GltfFile.Read(skeletonFile), profile).Write(clips, folder, name, progress, cancellation: cancellation)!.Value;
    }
}
