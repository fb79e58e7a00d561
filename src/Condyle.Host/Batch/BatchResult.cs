using Condyle.Runtime;

namespace Condyle.Host.Batch;

/// <summary>What became of a file of clips.</summary>
internal enum BatchState
{
    /// <summary>It was baked.</summary>
    Baked,

    /// <summary>It had been baked before, from the same rig, files and settings.</summary>
    UpToDate,

    /// <summary>It couldn't be baked; the reason says why.</summary>
    Failed,
}

/// <summary>What became of one file of a batch.</summary>
internal sealed record BatchResult(string Input, string Output, BatchState State, IReadOnlyList<BakedPart> Clips, IReadOnlyList<string> LeftOut, string? Reason)
{
    public static BatchResult Baked(BatchInput input, BakeManifest manifest) => new(input.Path, input.Output, BatchState.Baked, manifest.Clips, manifest.LeftOut ?? [], null);

    public static BatchResult UpToDate(BatchInput input, BakeManifest manifest) => new(input.Path, input.Output, BatchState.UpToDate, manifest.Clips, manifest.LeftOut ?? [], null);

    public static BatchResult Failed(BatchInput input, Exception problem) =>
        Failed(input, problem is BadInputException ? problem.Message : $"{problem.GetType().Name}: {problem.Message.ReplaceLineEndings(" ")}");

    public static BatchResult Failed(BatchInput input, string reason) => new(input.Path, input.Output, BatchState.Failed, [], [], reason);
}
