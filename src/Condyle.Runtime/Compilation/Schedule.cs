using Condyle.Runtime.Kernels;

namespace Condyle.Runtime.Compilation;

/// <summary>Batches in an order in which each finds its inputs ready.</summary>
/// <param name="batches">The batches.</param>
/// <param name="fetched">The slots of the channels that any of them reads.</param>
internal sealed class Schedule(IReadOnlyList<Batch> batches, IReadOnlyList<int> fetched)
{
    private readonly Batch[] batches = [.. batches];
    private readonly int[] fetched = [.. fetched];

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
            next.Fetch(fetched.AsSpan((fetched.Length * i / batches.Length)..(fetched.Length * (i + 1) / batches.Length)));
            batches[i].Run(pose);
        }

        pose.Keep();
    }
}
