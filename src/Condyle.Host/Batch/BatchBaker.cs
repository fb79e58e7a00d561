using Condyle.Host.Reporting;
using Condyle.Runtime;
using Condyle.Runtime.Gltf;
using Condyle.Runtime.Gltf.Writing;
using Condyle.Runtime.Matching;

namespace Condyle.Host.Batch;

/// <summary>Bakes files of clips, each by itself. One that fails fails alone; one that was baked before is left as it is.</summary>
/// <param name="rig">The rig.</param>
/// <param name="compiled">The same, compiled.</param>
/// <param name="delivered">The file that its skeleton was delivered in.</param>
/// <param name="target">What becomes of each file.</param>
internal sealed class BatchBaker(Rig rig, CompiledRig compiled, GltfFile delivered, IBakeTarget target)
{
    private readonly WorkHash works = new(rig, delivered, target.Settings);

    /// <summary>Bakes a file, unless that was done.</summary>
    public BatchResult Run(BatchInput input, CancellationToken cancellation)
    {
        try
        {
            var file = GltfFile.Read(input.Path);
            var work = works.Of(file, input.Name);
            if (BakeManifest.FindFinished(input.Output, work) is { } finished)
                return BatchResult.UpToDate(input, finished);

            var earlier = BakeManifest.Find(input.Output);
            var read = ClipFile.Read(file, compiled);
            var (reports, written) = target.Bake(read.Clips, input.Name, cancellation);
            if (reports.FirstOrDefault(report => !report.Holds) is { } wrong)
                return BatchResult.Failed(input, NotLive(wrong));
            List<BakedPart> parts = [.. reports.Zip(read.Clips, (report, clip) => BakedPart.Of(report, PassedLimits.Of(compiled, clip)))];
            var manifest = new BakeManifest(work, rig.Name, Path.GetFileName(input.Path), [.. written.Select(WrittenFile.Of)], parts, read.NodesNotInRig);
            WrittenFile.DiscardOld(earlier?.Files ?? [], written, Path.GetDirectoryName(Path.GetFullPath(input.Output))!);
            manifest.Write(input.Output);
            return BatchResult.Baked(input, manifest);
        }
        catch (Exception problem) when (problem is not OperationCanceledException)
        {
            return BatchResult.Failed(input, problem);
        }
    }

    /// <summary>Makes the folder, so that one that can't be is told before hours of work, and clears away what a killed batch left half-written there: by one look, however many files it is for.</summary>
    /// <exception cref="BadInputException">The folder can't be made or read.</exception>
    public void Prepare(IEnumerable<BatchInput> inputs, string folder)
    {
        try
        {
            Directory.CreateDirectory(folder);
            AtomicFile.DiscardLeftOvers(folder, inputs.SelectMany(input =>
                target.FilesFor(input.Name).Concat(ReportFiles.PathsFor(input.Output).Append(BakeManifest.PathFor(input.Output)).Select(path => Path.GetFileName(path)))));
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            throw new BadInputException(folder, $"the folder can't be used: {problem.Message.TrimEnd('.')}", "Check the path and its permissions", inner: problem);
        }
    }

    private static string NotLive(BakeReport report) =>
        $"clip '{report.Clip}': the baked motion is not the live motion: '{report.OnFrames.Metres.Joint}' is off by {Say.Metres(report.OnFrames.Metres.Value)}, and {Say.Metres(report.AllowedMetres)} are allowed";
}
