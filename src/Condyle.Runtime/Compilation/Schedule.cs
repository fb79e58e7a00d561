using Condyle.Runtime.Kernels;

namespace Condyle.Runtime.Compilation;

/// <summary>Batches in an order in which each finds its inputs ready.</summary>
internal sealed class Schedule(IReadOnlyList<Batch> batches)
{
    private readonly Batch[] batches = [.. batches];

    public IReadOnlyList<Batch> Batches => batches;

    public void Run(Buffers pose)
    {
        foreach (var batch in batches)
            batch.Run(pose);
    }
}
