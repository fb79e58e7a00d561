using Condyle.Host.Catalogue;
using Condyle.Host.Reporting;
using Condyle.Runtime;

namespace Condyle.Host.Commands;

/// <summary>
/// The main job: checks the rigs, then bakes and writes those that are good. All input is looked at before the first file is written.
/// </summary>
internal sealed class BakeCommand(Surroundings surroundings, BakeRequest request)
{
    public int Run(CancellationToken cancellation)
    {
        List<CheckedRig> rigs = [.. RigCatalogue.Of(surroundings).Choose(request.Rig).Select(CheckedRig.Of)];
        if (request.Skeleton is not null && rigs.Count > 1)
            throw new BadInputException("--skeleton", $"it is the delivered file of one rig, and there are {rigs.Count}", "Say which with --rig");
        var jobs = Prepare(rigs);

        var report = new Report(surroundings);
        var results = new List<RigJson>();
        foreach (var rig in rigs)
        {
            var job = jobs.Find(job => job.Rig == rig);
            var result = job is null ? null : request.Json
                ? job.Baker.Write(job.Output, null, cancellation)
                : report.WhileBaking(job.Clips, progress => job.Baker.Write(job.Output, progress, cancellation));
            if (request.Report && result is not null)
                ReportFiles.Write(result);
            results.Add(new RigJson(rig, result));
            if (!request.Json)
                report.Show(rig, result, job?.Clips ?? [], WhyNot(rig));
        }

        if (request.Json)
            JsonReport.Write(surroundings.Output, new { rigs = results });
        return results.All(one => one.IsGood) ? ExitCode.Ok : ExitCode.Failed;
    }

    /// <summary>What there is to bake, for each rig that is good and has clips and a delivered file.</summary>
    private List<BakeJob> Prepare(List<CheckedRig> rigs)
    {
        var clipsOf = rigs.Where(rig => rig.IsGood).ToDictionary(rig => rig, rig => rig.Entry.ClipsWithRange(rig.Compiled!));
        AskedClips.Check(request.Clips, clipsOf.Values.SelectMany(clips => clips));
        var jobs = new List<BakeJob>();
        foreach (var (rig, all) in clipsOf)
        {
            var clips = AskedClips.Among(request.Clips, all);
            if (clips.Count == 0 || FindDelivered(rig) is not { } skeleton)
                continue;
            var output = Path.Combine(request.Folder, rig.Name.ToLowerInvariant() + ".glb");
            jobs.Add(new BakeJob(rig, RigBaker.Prepare(rig.Compiled!, skeleton, clips, request.Settings), clips, output));
        }

        return jobs;
    }

    private string WhyNot(CheckedRig rig) => request.Skeleton is null && rig.Entry.SkeletonFile is null
        ? "it names no delivered file. Put [SkeletonFile(\"...\")] on its definition, or give --skeleton FILE"
        : request.Clips.Count > 0 ? "it has no clip of those asked for"
        : "there is nothing to animate. Give it a control that animators can move, or clips of its own";

    private string? FindDelivered(CheckedRig rig) => request.MayHaveNoFile && request.Rig is null
        ? rig.Entry.FindSkeleton(surroundings, request.Skeleton)
        : rig.Entry.NeedSkeleton(surroundings, request.Skeleton);

    private sealed record BakeJob(CheckedRig Rig, RigBaker Baker, IReadOnlyList<Clip> Clips, string Output);
}
