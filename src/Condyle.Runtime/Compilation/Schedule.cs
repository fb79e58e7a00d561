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

    /// <summary>
    /// The same where memory is far. Frames lie in a place that is used again and again, and those that last are brought from there; meanwhile what the next pose holds is fetched,
    /// a share with each batch: the processor gives up fetching more than it can keep track of.
    /// </summary>
    public void Run(Buffers pose, Buffers place, Buffers next)
    {
        pose.Borrow(place);
        for (var i = 0; i < batches.Length; i++)
        {
            next.Fetch(i, batches.Length);
            batches[i].Run(pose);
        }

        pose.Keep();
    }
}
