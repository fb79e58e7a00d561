using Condyle.Host.Batch;
using Condyle.Host.Catalogue;
using Condyle.Host.Reporting;
using Condyle.Runtime;
using Condyle.Runtime.Gltf;

namespace Condyle.Host.Commands;

/// <summary>
/// The main job: checks the rigs, then bakes and writes those that are good. All input is looked at before the first file is written; a clip that can't be baked fails alone.
/// </summary>
internal sealed class BakeCommand(Surroundings surroundings, BakeRequest request)
{
    public int Run(CancellationToken cancellation)
    {
        request.CheckSettings();
        List<CheckedRig> rigs = [.. RigCatalogue.Of(surroundings).Choose(request.Rig).Select(CheckedRig.Of)];
        if (request.Skeleton is not null && rigs.Count > 1)
            throw new BadInputException("--skeleton", $"it is the delivered file of one rig, and there are {rigs.Count}", "Say which with --rig");
        OutputPlace.CheckHolds(request.Output, rigs.Count);
        var jobs = Prepare(rigs);

        var report = new Report(surroundings);
        var results = new List<RigJson>();
        foreach (var rig in rigs)
        {
            var job = jobs.Find(job => job.Rig == rig);
            var result = job is null ? null : request.Json
                ? job.Write(null, request.Report, cancellation)
                : report.WhileBaking(job.Baker.Clips, progress => job.Write(progress, request.Report, cancellation));
            results.Add(new RigJson(rig, result, job?.Failures ?? []));
            if (!request.Json)
                report.Show(rig, result, job?.Baker.Clips ?? [], job?.Failures ?? [], WhyNot(rig, job));
        }

        if (request.Json)
            JsonReport.Write(surroundings.Output, new { rigs = results });
        return results.All(one => one.IsGood) ? ExitCode.Ok : ExitCode.Failed;
    }

    /// <summary>What there is to bake, for each rig that is good and has clips and a delivered file.</summary>
    /// <exception cref="BadInputException">The input can't be used.</exception>
    private List<BakeJob> Prepare(List<CheckedRig> rigs)
    {
        var clipsOf = rigs.Where(rig => rig.IsGood).ToDictionary(rig => rig, rig => rig.Entry.ClipsWithRange(rig.Compiled!));
        AskedClips.Check(request.Clips, clipsOf.Values);
        var jobs = new List<BakeJob>();
        foreach (var (rig, clips) in clipsOf)
        {
            var (asked, failures) = (AskedClips.Among(request.Clips, clips), AskedClips.FailuresAmong(request.Clips, clips));
            if (asked.Count + failures.Count == 0 || FindDelivered(rig) is not { } skeleton)
                continue;
            var output = OutputPlace.Of(request.Output, rig.Name.ToLowerInvariant() + ".glb");
            OutputPlace.CheckLoses(output, skeleton);
            var baker = RigBaker.Prepare(rig.Compiled!, GltfFile.Read(skeleton), asked, request.Settings, (clip, problem) => failures.Add(clips.Failed(clip, problem)));
            jobs.Add(new BakeJob(rig, baker, failures, output));
        }

        return jobs;
    }

    private string WhyNot(CheckedRig rig, BakeJob? job) => job is not null ? "it has no clip that can be baked"
        : request.Skeleton is null && rig.Entry.SkeletonFile is null ? "it names no delivered file. Put [SkeletonFile(\"...\")] on its definition, or give --skeleton FILE"
        : request.Clips.Count > 0 ? "it has no clip of those asked for"
        : "there is nothing to animate. Give it a control that animators can move, or clips of its own";

    private string? FindDelivered(CheckedRig rig) => request.MayHaveNoFile && request.Rig is null
        ? rig.Entry.FindSkeleton(surroundings, request.Skeleton)
        : rig.Entry.NeedSkeleton(surroundings, request.Skeleton);

    private sealed record BakeJob(CheckedRig Rig, RigBaker Baker, IReadOnlyList<ClipFailure> Failures, string Output)
    {
        /// <summary>Bakes what can be baked; null where that is nothing. What an earlier bake left beside the file speaks of it no longer.</summary>
        public RigBakeResult? Write(IProgress<BakeProgress>? progress, bool withReports, CancellationToken cancellation)
        {
            if (Baker.Bake(progress, cancellation) is not { Count: > 0 } baked)
                return null;
            var result = Baker.Write(Output, baked);
            if (withReports)
                ReportFiles.Write(result);
            else
                ReportFiles.DiscardOld(Output);
            BakeManifest.DiscardOld(Output, [Output, .. ReportFiles.PathsFor(Output)]);
            return result;
        }
    }
}
