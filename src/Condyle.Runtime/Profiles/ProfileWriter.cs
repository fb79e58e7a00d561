using System.Numerics;
using System.Text.Json;
using Condyle.Runtime.Gltf;
using Condyle.Runtime.Gltf.Reading;
using Condyle.Runtime.Gltf.Writing;

namespace Condyle.Runtime.Profiles;

/// <summary>Writes motion of one rig for an engine, clips after clips: what doesn't depend on them is worked out once.</summary>
internal sealed class ProfileWriter
{
    private readonly CompiledRig rig;
    private readonly GltfFile delivered;
    private readonly EngineProfile profile;
    private readonly EngineSpace space;
    private readonly GltfFile skeleton;
    private readonly bool[] roots;
    private readonly DetailLevel?[] levels;

    /// <exception cref="BadInputException">The profile can't be.</exception>
    public ProfileWriter(CompiledRig rig, GltfFile delivered, EngineProfile profile)
    {
        profile.Check();
        (this.rig, this.delivered, this.profile, space) = (rig, delivered, profile, new EngineSpace(profile));
        skeleton = space.Skeleton(delivered);
        roots = [.. NodeTree.Of(delivered).Parents.Select(parent => parent < 0)];
        levels = profile.Levels.Count == 0 ? [null] : [.. profile.Levels];
        HashSet<string> joints = [.. rig.Joints.Select(joint => joint.Name), .. GltfSkeleton.Read(delivered).Joints.Select(joint => joint.Name)];
        NotInSkeleton = [.. levels.OfType<DetailLevel>().Select(level => (level.Name, level.UnknownAmong(joints))).Where(level => level.Item2.Count > 0)];
    }

    /// <summary>What levels leave out that is no joint of the skeleton.</summary>
    public IReadOnlyList<(string Level, IReadOnlyList<string> Names)> NotInSkeleton { get; }

    /// <summary>The files that are written for a name: the manifest, and one for each level.</summary>
    public IReadOnlyList<string> FilesFor(string name) => [ManifestFor(name), .. levels.Select(level => FileFor(name, level))];

    /// <summary>Bakes clips and writes the files.</summary>
    /// <param name="clips">The clips.</param>
    /// <param name="folder">Where the files are written.</param>
    /// <param name="name">What their names begin with; the rig's when null.</param>
    /// <param name="progress">Told how far each clip is.</param>
    /// <param name="failed">Takes a clip that can't be baked; null where that stops it all.</param>
    /// <param name="cancellation">Stops the bake between frames.</param>
    /// <returns>Null where every clip failed; nothing is written then.</returns>
    public (ProfileManifest Manifest, IReadOnlyList<BakeReport> Reports)? Write(
        IReadOnlyList<Clip> clips, string folder, string? name = null, IProgress<BakeProgress>? progress = null, Action<Clip, BadInputException>? failed = null, CancellationToken cancellation = default)
    {
        name ??= rig.Name.ToLowerInvariant();
        if (FilesFor(name).Select(file => Path.GetFullPath(Path.Combine(folder, file))).Contains(Path.GetFullPath(delivered.Path), StringComparer.Ordinal))
            throw new BadInputException(delivered.Path, $"the profile '{profile.Name}' would write over the delivered file", "Write to another folder");
        var baker = RigBaker.Prepare(rig, delivered, clips, profile.Bake, failed);
        if (baker.Bake(progress, cancellation) is not { Count: > 0 } baked)
            return null;
        List<BakedClip> wanted = [.. baked.Select(clip => clip with { Tracks = AdditiveMotion.Of(profile, clip, rig, baker.Match.Rest), Markers = profile.Events ? clip.Markers : [] })];
        foreach (var level in levels.OfType<DetailLevel>())
            CheckLevel(level, baked);

        var earlier = Earlier(Path.Combine(folder, ManifestFor(name)));
        var files = new List<ProfileFile>();
        foreach (var level in levels)
        {
            var path = Path.Combine(folder, FileFor(name, level));
            skeleton.Append([.. wanted.Select(clip => ToGltf(baker, clip, level))]).Write(path);
            files.Add(FileOf(path, level));
        }

        WrittenFile.DiscardOld(earlier, files.Select(file => file.Name), folder);
        var manifest = new ProfileManifest(rig.Name, profile.Name, profile.UnitsPerMetre, profile.Up.ToString(), files, [.. wanted.Select(clip => new ProfileClip(
            clip.Name, clip.Times[^1], profile.Bake.FramesPerSecond, clip.Times.Count, profile.Bake.Loop, AdditiveText, clip.Markers))]);
        AtomicFile.Write(Path.Combine(folder, ManifestFor(name)), manifest.ToJson());
        return (manifest, [.. baked.Select(clip => clip.Report)]);
    }

    private string? AdditiveText => profile.Additive is { } reference ? reference.At is { } at ? FormattableString.Invariant($"{at} s") : "rest" : null;

    private string ManifestFor(string name) => $"{name}.{profile.Name}.json";

    private string FileFor(string name, DetailLevel? level) => $"{name}.{profile.Name}{(level is null ? "" : $".{level.Name}")}.glb";

    private GltfClip ToGltf(RigBaker baker, BakedClip clip, DetailLevel? level)
    {
        var kept = clip.Tracks.Where(track => level?.Holds(rig.Joints[track.Joint].Name) ?? true).ToList();
        var written = baker.Match.ToGltf(clip with { Tracks = kept.Count > 0 ? kept : [Still(baker, clip, level!)], Travel = clip.Travel is { } travel ? travel with { Translations = [.. travel.Translations.Select(space.Way)] } : null });
        var extras = written.Extras ?? [];
        if (AdditiveText is { } additive)
            extras["additive"] = additive;
        return written with { Tracks = [.. written.Tracks.Select(track => space.Track(track, roots[track.Node], profile.Additive is not null))], Extras = extras.Count > 0 ? extras : null };
    }

    // A clip that moves only what a level leaves out still needs one track to exist.
    private BakedTrack Still(RigBaker baker, BakedClip clip, DetailLevel level)
    {
        var joint = rig.Joints.First(joint => level.Holds(joint.Name)).Index;
        var turn = profile.Additive is null ? baker.Match.Rest[joint].Rotation : Quaternion.Identity;
        return new BakedTrack(joint, null, [.. clip.Times.Select(_ => turn)], null);
    }

    /// <summary>What is left out keeps its rest: a joint that is kept and moves under it would move otherwise than it should.</summary>
    private void CheckLevel(DetailLevel level, IReadOnlyList<BakedClip> clips)
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

        if (!rig.Joints.Any(joint => level.Holds(joint.Name)))
            throw profile.Wrong($"its level of detail '{level.Name}' leaves out every joint", "Keep one");
    }

    private ProfileFile FileOf(string path, DetailLevel? level)
    {
        var (name, bytes, hash) = WrittenFile.Of(path);
        return new ProfileFile(name, level?.Name, rig.Joints.Count(joint => level?.Holds(joint.Name) ?? true), bytes, hash)
        {
            NotInSkeleton = NotInSkeleton.FirstOrDefault(unknown => unknown.Level == level?.Name).Names ?? [],
        };
    }

    /// <summary>What an earlier bake wrote; none where there is no manifest of one.</summary>
    private static IReadOnlyList<WrittenFile> Earlier(string manifest)
    {
        try
        {
            return File.Exists(manifest) && JsonSerializer.Deserialize<FilesOf>(File.ReadAllBytes(manifest), ReadableJson.Whole) is { } told ? [.. told.Files.OfType<WrittenFile>()] : [];
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException or JsonException or NotSupportedException)
        {
            return [];
        }
    }

    private sealed record FilesOf(IReadOnlyList<WrittenFile> Files);
}
