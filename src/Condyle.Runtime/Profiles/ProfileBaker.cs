using System.Numerics;
using Condyle.Runtime.Gltf;
using Condyle.Runtime.Gltf.Reading;
using Condyle.Runtime.Gltf.Writing;
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
    /// <param name="folder">Where the files are written: <c>name.profile.glb</c> or <c>name.profile.level.glb</c>, and last <c>name.profile.json</c>, the manifest.</param>
    /// <param name="name">What the files' names begin with; the rig's name in small letters when null.</param>
    /// <param name="progress">Told how far each clip is.</param>
    /// <param name="cancellation">Stops the bake between frames; nothing is written then.</param>
    /// <returns>The manifest, and how each clip's baked motion compares with the live motion.</returns>
    /// <exception cref="BadInputException">A file, a clip or the profile can't be used, or a file can't be written.</exception>
    public static (ProfileManifest Manifest, IReadOnlyList<BakeReport> Reports) Write(
        CompiledRig rig, string skeletonFile, IReadOnlyList<Clip> clips, EngineProfile profile, string folder, string? name = null, IProgress<BakeProgress>? progress = null, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(profile);
        ArgumentNullException.ThrowIfNull(folder);
        profile.Check();
        var baker = RigBaker.Prepare(rig, skeletonFile, clips, profile.Bake);
        var baked = baker.Bake(progress, cancellation);
        var space = new EngineSpace(profile);
        var skeleton = space.Skeleton(baker.Delivered);
        List<BakedClip> wanted = [.. baked.Select(clip => clip with { Tracks = AdditiveMotion.Of(profile, clip, rig, baker.Match.Rest), Markers = profile.Events ? clip.Markers : [] })];
        DetailLevel?[] levels = profile.Levels.Count == 0 ? [null] : [.. profile.Levels];
        foreach (var level in levels.OfType<DetailLevel>())
            CheckLevel(profile, level, rig, baked);

        name ??= rig.Name.ToLowerInvariant();
        var roots = Roots(baker.Delivered);
        var files = new List<ProfileFile>();
        foreach (var level in levels)
        {
            var path = Path.Combine(folder, $"{name}.{profile.Name}{(level is null ? "" : $".{level.Name}")}.glb");
            skeleton.Append([.. wanted.Select(clip => ToGltf(clip, level))]).Write(path);
            files.Add(FileOf(path, level, rig.Joints.Count(joint => level?.Holds(joint.Name) ?? true)));
        }

        var manifest = new ProfileManifest(rig.Name, profile.Name, profile.UnitsPerMetre, profile.Up.ToString(), files, [.. wanted.Select(clip => new ProfileClip(
            clip.Name, clip.Times[^1], profile.Bake.FramesPerSecond, clip.Times.Count, profile.Bake.Loop, AdditiveText(profile), clip.Markers))]);
        AtomicFile.Write(Path.Combine(folder, $"{name}.{profile.Name}.json"), manifest.ToJson());
        return (manifest, [.. baked.Select(clip => clip.Report)]);

        GltfClip ToGltf(BakedClip clip, DetailLevel? level)
        {
            var kept = clip.Tracks.Where(track => level?.Holds(rig.Joints[track.Joint].Name) ?? true).ToList();
            var written = baker.Match.ToGltf(clip with { Tracks = kept.Count > 0 ? kept : [Still(clip, level!)], Travel = clip.Travel is { } travel ? travel with { Translations = [.. travel.Translations.Select(space.Way)] } : null });
            var extras = written.Extras ?? [];
            if (AdditiveText(profile) is { } additive)
                extras["additive"] = additive;
            return written with { Tracks = [.. written.Tracks.Select(track => space.Track(track, roots[track.Node], profile.Additive is not null))], Extras = extras.Count > 0 ? extras : null };
        }

        // A clip that moves only what a level leaves out still needs one track to exist.
        BakedTrack Still(BakedClip clip, DetailLevel level)
        {
            var joint = rig.Joints.First(joint => level.Holds(joint.Name)).Index;
            var turn = profile.Additive is null ? baker.Match.Rest[joint].Rotation : Quaternion.Identity;
            return new BakedTrack(joint, null, [.. clip.Times.Select(_ => turn)], null);
        }
    }

    private static string? AdditiveText(EngineProfile profile) => profile.Additive is { } reference ? reference.At is { } at ? FormattableString.Invariant($"{at} s") : "rest" : null;

    private static bool[] Roots(GltfFile file) => [.. NodeTree.Of(file).Parents.Select(parent => parent < 0)];

    /// <summary>What is left out keeps its rest: a joint that is kept and moves under it would move otherwise than it should.</summary>
    private static void CheckLevel(EngineProfile profile, DetailLevel level, CompiledRig rig, IReadOnlyList<BakedClip> clips)
    {
        var moving = clips.SelectMany(clip => clip.Tracks).Select(track => track.Joint).ToHashSet();
        foreach (var joint in rig.Joints.Where(joint => level.Holds(joint.Name)))
        {
            for (var above = joint.Parent; above >= 0; above = rig.Joints[above].Parent)
            {
                if (moving.Contains(above) && !level.Holds(rig.Joints[above].Name))
                    throw profile.Wrong($"its level of detail '{level.Name}' leaves out '{rig.Joints[above].Name}', which moves, and keeps '{joint.Name}' under it", "Leave out all that hangs under a joint, or keep the joint");
            }
        }

        if (!moving.Any(joint => level.Holds(rig.Joints[joint].Name)))
            throw profile.Wrong($"its level of detail '{level.Name}' leaves out all that moves", "Keep a joint");
    }

    private static ProfileFile FileOf(string path, DetailLevel? level, int joints) =>
        new(Path.GetFileName(path), level?.Name, joints, new FileInfo(path).Length, FileHash.Of(path));
}
