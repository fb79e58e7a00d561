using Condyle.Host.Batch;
using Condyle.Host.Catalogue;
using Condyle.Host.Reporting;
using Condyle.Runtime;
using Condyle.Runtime.Gltf;

namespace Condyle.Host.Commands;

/// <summary>Bakes files of clips for an engine, as a profile of the team says: for each file what the profile writes, called after the file. One that fails fails alone.</summary>
internal sealed class ProfileBatchCommand(Surroundings surroundings, BatchRequest request, string profileName)
{
    public int Run(CancellationToken cancellation)
    {
        var profile = ProfileCatalogue.Choose(surroundings, profileName);
        var shard = Shard.Parse(request.Shard, surroundings.Variable);
        List<BatchInput> mine = [.. BatchInput.Of(request.Files, request.Bake.Folder).Where(input => shard.Holds(input.Name))];
        var rig = CheckedRig.Of(BatchCommand.OneRig(surroundings, request.Bake.Rig));
        if (rig.Compiled is not { } compiled)
        {
            BatchCommand.ShowBad(surroundings, request.Bake.Json, rig);
            return ExitCode.Failed;
        }

        var skeleton = rig.Entry.NeedSkeleton(surroundings, request.Bake.Skeleton);
        RigBaker.CheckFits(compiled, GltfFile.Read(skeleton));
        var (results, failed) = (new List<object>(), 0);
        foreach (var input in mine)
        {
            try
            {
                var read = ClipFile.Read(GltfFile.Read(input.Path), compiled);
                var (manifest, reports) = ProfileBaker.Write(compiled, skeleton, read.Clips, profile, request.Bake.Folder, input.Name, cancellation: cancellation);
                failed += reports.All(report => report.Holds) ? 0 : 1;
                results.Add(new { input = input.Path, manifest, clips = reports, leftOut = read.NodesNotInRig });
                if (request.Bake.Json)
                    continue;
                ProfileCommand.Show(surroundings, request.Bake.Folder, manifest, reports, input.Path);
                if (read.NodesNotInRig.Count > 0)
                    surroundings.Output.WriteLine($"  {BatchCommand.LeftOut(read.NodesNotInRig)}");
            }
            catch (Exception problem) when (problem is not OperationCanceledException)
            {
                failed++;
                var reason = BatchResult.Failed(input, problem).Reason;
                results.Add(new { input = input.Path, error = reason });
                if (!request.Bake.Json)
                    surroundings.Output.WriteLine((problem as BadInputException)?.File == input.Path ? reason : $"{input.Path}: {reason}");
            }
        }

        if (request.Bake.Json)
            JsonReport.Write(surroundings.Output, new { profile = profile.Name, rig = rig.Name, files = results });
        else
            surroundings.Output.WriteLine($"{mine.Count - failed} baked, {failed} failed");
        return failed == 0 ? ExitCode.Ok : ExitCode.Failed;
    }
}
