using Condyle.Host.Catalogue;
using Condyle.Host.Reporting;
using Condyle.Runtime;

namespace Condyle.Host.Commands;

/// <summary>Bakes the project's clips for an engine, as a profile of the team says.</summary>
internal sealed class ProfileCommand(Surroundings surroundings, BakeRequest request, string profileName)
{
    public int Run(CancellationToken cancellation)
    {
        var profile = ProfileCatalogue.Choose(surroundings, profileName);
        List<CheckedRig> rigs = [.. RigCatalogue.Of(surroundings).Choose(request.Rig).Select(CheckedRig.Of)];
        var clipsOf = rigs.Where(rig => rig.IsGood).ToDictionary(rig => rig, rig => rig.Entry.Clips());
        AskedClips.Check(request.Clips, clipsOf.Values.SelectMany(clips => clips));
        var results = new List<object>();
        var isGood = rigs.All(rig => rig.IsGood);
        foreach (var rig in rigs)
        {
            if (rig.Compiled is not { } compiled)
            {
                if (request.Json)
                    results.Add(new RigJson(rig, null));
                else
                    new Report(surroundings).Show([rig]);
                continue;
            }

            var clips = AskedClips.Among(request.Clips, clipsOf[rig]);
            if (clips.Count == 0 || (request.Rig is null ? rig.Entry.FindSkeleton(surroundings, request.Skeleton) : rig.Entry.NeedSkeleton(surroundings, request.Skeleton)) is not { } skeleton)
            {
                if (!request.Json)
                    surroundings.Output.WriteLine($"{rig.Name}: not baked, {(clips.Count > 0 ? "it names no delivered file" : request.Clips.Count > 0 ? "it has no clip of those asked for" : "the project has no clips for it")}");
                continue;
            }

            var (manifest, reports) = ProfileBaker.Write(compiled, skeleton, clips, profile, request.Folder, cancellation: cancellation);
            isGood &= reports.All(report => report.Holds);
            results.Add(new { rig = rig.Name, manifest, clips = reports });
            if (!request.Json)
                Show(surroundings, request.Folder, manifest, reports);
        }

        if (request.Json)
            JsonReport.Write(surroundings.Output, new { profile = profile.Name, rigs = results });
        return isGood ? ExitCode.Ok : ExitCode.Failed;
    }

    public static void Show(Surroundings surroundings, string folder, ProfileManifest manifest, IReadOnlyList<BakeReport> reports, string? from = null)
    {
        surroundings.Output.WriteLine(FormattableString.Invariant($"{(from is null ? "" : from + ": ")}{manifest.Rig} for {manifest.Profile}: {manifest.UnitsPerMetre} units to a metre, {manifest.Up} up"));
        foreach (var report in reports)
            surroundings.Output.WriteLine(FormattableString.Invariant($"  {report.Clip}: {report.Frames} frames at {report.FramesPerSecond}/s, on frames within {Say.Both(report.OnFrames)}{(report.Holds ? "" : ": more than is allowed")}"));
        foreach (var file in manifest.Files)
            surroundings.Output.WriteLine($"  wrote {Path.Combine(folder, file.Name)}, {Say.Bytes(file.Bytes)}");
    }
}
