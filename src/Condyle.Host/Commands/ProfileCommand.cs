using Condyle.Host.Batch;
using Condyle.Host.Catalogue;
using Condyle.Host.Reporting;
using Condyle.Runtime;
using Condyle.Runtime.Gltf;
using Condyle.Runtime.Profiles;

namespace Condyle.Host.Commands;

/// <summary>Bakes the project's clips for an engine, as a profile of the team says. A clip that can't be baked fails alone.</summary>
internal sealed class ProfileCommand(Surroundings surroundings, BakeRequest request, string profileName)
{
    public int Run(CancellationToken cancellation)
    {
        var profile = ProfileCatalogue.Choose(surroundings, profileName);
        OutputPlace.CheckIsFolder(request.Output);
        List<CheckedRig> rigs = [.. RigCatalogue.Of(surroundings).Choose(request.Rig).Select(CheckedRig.Of)];
        var clipsOf = rigs.Where(rig => rig.IsGood).ToDictionary(rig => rig, rig => rig.Entry.Clips());
        AskedClips.Check(request.Clips, clipsOf.Values);
        // What no clip could make good is told of any rig before something is written for the first.
        var writers = clipsOf.ToDictionary(known => known.Key, known => WriterFor(known.Key, known.Value, profile));
        var results = new List<object>();
        var isGood = true;
        foreach (var rig in rigs)
        {
            if (!rig.IsGood)
            {
                isGood = false;
                if (request.Json)
                    results.Add(new RigJson(rig, null, []));
                else
                    new Report(surroundings).Show([rig]);
                continue;
            }

            var (clips, failures) = (AskedClips.Among(request.Clips, clipsOf[rig]), AskedClips.FailuresAmong(request.Clips, clipsOf[rig]));
            if (writers[rig] is not { } writer)
            {
                if (!request.Json)
                    surroundings.Tell($"{rig.Name}: not baked, {(clips.Count > 0 ? "it names no delivered file" : request.Clips.Count > 0 ? "it has no clip of those asked for" : "the project has no clips for it")}");
                continue;
            }

            var written = clips.Count == 0 ? null : Write(writer, rig.Name, clips, (clip, problem) => failures.Add(clipsOf[rig].Failed(clip, problem)), cancellation);
            isGood &= failures.Count == 0 && written?.Reports.All(report => report.Holds) != false;
            results.Add(new { rig = rig.Name, manifest = written?.Manifest, clips = written?.Reports ?? [], failedClips = failures });
            if (!request.Json)
                Show(rig.Name, profile, written, failures);
        }

        if (request.Json)
            JsonReport.Write(surroundings.Output, new { profile = profile.Name, rigs = results });
        return isGood ? ExitCode.Ok : ExitCode.Failed;
    }

    /// <summary>What bakes a rig's clips; none where it has none of those asked for, or names no delivered file.</summary>
    private ProfileWriter? WriterFor(CheckedRig rig, ProjectClips clips, EngineProfile profile)
    {
        if (AskedClips.Among(request.Clips, clips).Count + AskedClips.FailuresAmong(request.Clips, clips).Count == 0
            || (request.Rig is null ? rig.Entry.FindSkeleton(surroundings, request.Skeleton) : rig.Entry.NeedSkeleton(surroundings, request.Skeleton)) is not { } skeleton)
            return null;
        var delivered = GltfFile.Read(skeleton);
        RigBaker.CheckFits(rig.Compiled!, delivered, profile.Bake.RootMotion);
        return new ProfileWriter(rig.Compiled!, delivered, profile);
    }

    /// <summary>Bakes what can be baked; null where that is nothing. What a batch told of the files before speaks of them no longer.</summary>
    private Written? Write(ProfileWriter writer, string rig, IReadOnlyList<Clip> clips, Action<Clip, BadInputException> failed, CancellationToken cancellation)
    {
        var name = rig.ToLowerInvariant();
        if (writer.Write(clips, request.Output, name, failed: failed, cancellation: cancellation) is not var (manifest, reports))
            return null;
        var files = writer.FilesFor(name);
        var told = Path.Combine(request.Output, files[0]);
        BakeManifest.DiscardOld(told, files);
        return new Written(manifest, told, reports);
    }

    private void Show(string rig, EngineProfile profile, Written? written, IReadOnlyList<ClipFailure> failures)
    {
        if (written is var (manifest, told, reports))
        {
            surroundings.Tell(FormattableString.Invariant($"{rig} for {manifest.Profile}: {manifest.UnitsPerMetre} {(manifest.UnitsPerMetre == 1 ? "unit" : "units")} to a metre, {manifest.Up} up{(profile.Bake.Keys is { } keys ? $", keys left out within {Say.Metres(keys.Metres)} and {Say.Degrees(keys.Degrees)}" : "")}"));
            foreach (var report in reports)
                surroundings.Tell(FormattableString.Invariant($"  {report.Clip}: {report.Frames} frames at {report.FramesPerSecond}/s, on frames within {Say.Both(report.OnFrames)} of live motion{(report.Holds ? "" : ": more than is allowed")}"));
            foreach (var file in manifest.Files)
                surroundings.Tell($"  wrote {Path.Combine(request.Output, file.Name)}, {Say.Bytes(file.Bytes)}");
            surroundings.Tell($"  wrote {told}, their manifest");
            foreach (var file in manifest.Files.Where(file => file.NotInSkeleton.Count > 0))
                surroundings.Tell($"  {Say.NotInSkeleton(file.Level, file.NotInSkeleton)}");
        }
        else
            surroundings.Tell($"{rig}: not baked, it has no clip that can be");

        foreach (var failure in failures)
            surroundings.Tell($"  error: {failure.Reason}");
    }

    /// <summary>What was written for an engine, and which file tells of it.</summary>
    private sealed record Written(ProfileManifest Manifest, string Told, IReadOnlyList<BakeReport> Reports);
}
