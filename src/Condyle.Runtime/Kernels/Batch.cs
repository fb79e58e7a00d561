namespace Condyle.Runtime.Kernels;

/// <summary>Work of one kind on one level: items that don't wait for each other, as arrays of indices and constants.</summary>
internal abstract class Batch
{
    /// <summary>Does the work for every item. It reads what earlier batches wrote and allocates nothing.</summary>
    public abstract void Run(Buffers pose);
}
