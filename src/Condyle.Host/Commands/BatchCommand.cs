using Condyle.Host.Batch;
using Condyle.Host.Catalogue;
using Condyle.Host.Reporting;
using Condyle.Runtime;
using Condyle.Runtime.Gltf;

namespace Condyle.Host.Commands;

/// <summary>Bakes many files of clips by one rig, into the delivered file or as an engine profile says, several at a time, and says at the end what became of them.</summary>
internal sealed class BatchCommand(Surroundings surroundings, BatchRequest request)
{
    public int Run(CancellationToken cancellation)
    {
        var shard = Shard.Parse(request.Shard, surroundings.Variable);
        if (request.Jobs is < 1)
            throw new BadInputException("--jobs", $"{request.Jobs} at a time can't be", "Give at least 1");
        request.Bake.CheckSettings();
        OutputPlace.CheckIsFolder(request.Bake.Output);
        var profile = request.Profile is { } name ? ProfileCatalogue.Choose(surroundings, name) : null;
        var rig = CheckedRig.Of(OneRig());
        if (rig is not { IsGood: true, Rig: { } built, Compiled: { } compiled })
        {
            ShowBad(rig);
            return ExitCode.Failed;
        }

        var delivered = GltfFile.Read(rig.Entry.NeedSkeleton(surroundings, request.Bake.Skeleton));
        RigBaker.CheckFits(compiled, delivered, (profile?.Bake ?? request.Bake.Settings).RootMotion);
        IBakeTarget target = profile is not null
            ? new ProfileTarget(compiled, delivered, profile, request.Bake.Output)
            : new DeliveredTarget(compiled, delivered, request.Bake.Settings, request.Bake.Output, request.Bake.Report);
        var all = BatchInput.Of(request.Files, target, request.Bake.Output);
        BatchInput.CheckKept(all, delivered.Path, target, request.Bake.Output);
        var results = Bake([.. all.Where(input => shard.Holds(input.Name))], new BatchBaker(built, compiled, delivered, target), cancellation);
        if (request.Bake.Json)
            JsonReport.Write(surroundings.Output, new { rig = rig.Name, profile = profile?.Name, shard = $"{shard.Index}/{shard.Count}", of = all.Count, notes = target.Notes, files = results });
        else
            Summary(results, shard, all.Count, target.Notes);
        return results.All(result => result.State != BatchState.Failed) ? ExitCode.Ok : ExitCode.Failed;
    }

    private BatchResult[] Bake(List<BatchInput> mine, BatchBaker baker, CancellationToken cancellation)
    {
        baker.Prepare(mine, request.Bake.Output);
        var results = new BatchResult[mine.Count];
        new BatchProgress(surroundings, request.Bake.Json).Run(mine.Count, tell => Parallel.For(
            0,
            mine.Count,
            new ParallelOptions { MaxDegreeOfParallelism = request.Jobs ?? Environment.ProcessorCount, CancellationToken = cancellation },
            index => tell(results[index] = baker.Run(mine[index], cancellation))));
        return results;
    }

    private void ShowBad(CheckedRig rig)
    {
        if (request.Bake.Json)
            JsonReport.Write(surroundings.Output, new { rigs = new[] { new RigJson(rig, null, []) } });
        else
            new Report(surroundings).Show([rig]);
    }

    private RigEntry OneRig()
    {
        var rigs = RigCatalogue.Of(surroundings).Choose(request.Bake.Rig);
        return rigs is [var only] ? only : throw new BadInputException("bake", $"files of clips are baked by one rig, and there are {rigs.Count}", "Say which with --rig");
    }

    private void Summary(BatchResult[] results, Shard shard, int all, IReadOnlyList<string> notes)
    {
        var failed = results.Where(result => result.State == BatchState.Failed).ToList();
        var counts = $"{results.Count(result => result.State == BatchState.Baked)} baked, {results.Count(result => result.State == BatchState.UpToDate)} up to date, {failed.Count} failed";
        surroundings.Tell(counts + (shard.Count > 1 ? $" (share {shard.Index}/{shard.Count}: {results.Length} of {all} files)" : ""));
        foreach (var note in notes)
            surroundings.Tell($"  {note}");
        foreach (var (result, clip) in results.SelectMany(result => result.Clips, (result, clip) => (result, clip)))
        {
            foreach (var passed in clip.BeyondLimits ?? [])
                surroundings.Tell($"  {result.Input}: '{clip.Clip}' at {passed}");
        }

        foreach (var result in results.Where(result => result.LeftOut.Count > 0))
        {
            surroundings.Tell(
                $"  {result.Input}: the rig has no {Say.Names(result.LeftOut)}, so what moves there is left out. Name the nodes as the controls are named now, or put an earlier bake onto the controls with match.");
        }

        foreach (var result in failed)
            surroundings.Tell(result.Reason!.StartsWith(result.Input, StringComparison.Ordinal) ? $"  {result.Reason}" : $"  {result.Input}: {result.Reason}");
    }
}
