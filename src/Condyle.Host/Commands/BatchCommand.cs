using Condyle.Host.Batch;
using Condyle.Host.Catalogue;
using Condyle.Host.Reporting;
using Condyle.Runtime;
using Condyle.Runtime.Gltf;

namespace Condyle.Host.Commands;

/// <summary>Bakes many files of clips by one rig, several at a time, and says at the end what became of them.</summary>
internal sealed class BatchCommand(Surroundings surroundings, BatchRequest request)
{
    public int Run(CancellationToken cancellation)
    {
        var shard = Shard.Parse(request.Shard, surroundings.Variable);
        if (request.Jobs is < 1)
            throw new BadInputException("--jobs", $"{request.Jobs} at a time can't be", "Give at least 1");
        var all = BatchInput.Of(request.Files, request.Bake.Folder);
        List<BatchInput> mine = [.. all.Where(input => shard.Holds(input.Name))];

        var rig = CheckedRig.Of(OneRig(surroundings, request.Bake.Rig));
        if (rig is not { IsGood: true, Rig: { } built, Compiled: { } compiled })
        {
            ShowBad(surroundings, request.Bake.Json, rig);
            return ExitCode.Failed;
        }

        var delivered = GltfFile.Read(rig.Entry.NeedSkeleton(surroundings, request.Bake.Skeleton));
        RigBaker.CheckFits(compiled, delivered);
        var baker = new BatchBaker(built, compiled, delivered, request.Bake.Settings, request.Bake.Report);
        BatchBaker.DiscardLeftOvers(mine, request.Bake.Folder);
        var results = new BatchResult[mine.Count];
        new BatchProgress(surroundings, request.Bake.Json).Run(mine.Count, tell => Parallel.For(
            0,
            mine.Count,
            new ParallelOptions { MaxDegreeOfParallelism = request.Jobs ?? Environment.ProcessorCount, CancellationToken = cancellation },
            index => tell(results[index] = baker.Run(mine[index], cancellation))));
        if (request.Bake.Json)
            JsonReport.Write(surroundings.Output, new { rig = rig.Name, shard = $"{shard.Index}/{shard.Count}", of = all.Count, files = results });
        else
            Summary(results, shard, all.Count);
        return results.All(result => result.State != BatchState.Failed) ? ExitCode.Ok : ExitCode.Failed;
    }

    /// <summary>What is told of nodes that a file of clips moves and the rig hasn't.</summary>
    public static string LeftOut(IReadOnlyList<string> nodes) =>
        $"the rig has no {Say.Names(nodes)}, so what moves there is left out. Name the nodes as the controls are named now, or put an earlier bake onto the controls with match.";

    /// <summary>What is told of a rig that nothing can be baked by.</summary>
    public static void ShowBad(Surroundings surroundings, bool json, CheckedRig rig)
    {
        if (json)
            JsonReport.Write(surroundings.Output, new { rigs = new[] { new RigJson(rig, null) } });
        else
            new Report(surroundings).Show([rig]);
    }

    /// <exception cref="BadInputException">There are several, and none is named.</exception>
    public static RigEntry OneRig(Surroundings surroundings, string? name)
    {
        var rigs = RigCatalogue.Of(surroundings).Choose(name);
        return rigs is [var only] ? only : throw new BadInputException("bake", $"files of clips are baked by one rig, and there are {rigs.Count}", "Say which with --rig");
    }

    private void Summary(BatchResult[] results, Shard shard, int all)
    {
        var failed = results.Where(result => result.State == BatchState.Failed).ToList();
        var counts = $"{results.Count(result => result.State == BatchState.Baked)} baked, {results.Count(result => result.State == BatchState.UpToDate)} up to date, {failed.Count} failed";
        surroundings.Output.WriteLine(counts + (shard.Count > 1 ? $" (share {shard.Index}/{shard.Count}: {results.Length} of {all} files)" : ""));
        foreach (var (result, clip) in results.SelectMany(result => result.Clips, (result, clip) => (result, clip)))
        {
            foreach (var passed in clip.BeyondLimits ?? [])
                surroundings.Output.WriteLine($"  {result.Input}: '{clip.Clip}' at {passed}");
        }

        foreach (var result in results.Where(result => result.LeftOut.Count > 0))
            surroundings.Output.WriteLine($"  {result.Input}: {LeftOut(result.LeftOut)}");

        foreach (var result in failed)
            surroundings.Output.WriteLine(result.Reason!.StartsWith(result.Input, StringComparison.Ordinal) ? $"  {result.Reason}" : $"  {result.Input}: {result.Reason}");
    }
}
