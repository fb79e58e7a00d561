namespace Condyle.Runtime.Kernels;

/// <summary>Work of one kind on one level: items that don't wait for each other, as arrays of indices and constants.</summary>
internal abstract class Batch
{
    /// <summary>Does the work for every item. It reads what earlier batches wrote and allocates nothing.</summary>
    public void Run(Buffers pose)
    {
        switch (pose.Width)
        {
            case 1: RunOne(pose); break;
            case Wide8: RunEight(pose); break;
            default: RunSixteen(pose); break;
        }
    }

    protected const int Wide8 = 8;

    /// <summary>For one rig.</summary>
    protected abstract void RunOne(Buffers pose);

    /// <summary>For eight rigs side by side.</summary>
    protected abstract void RunEight(Buffers pose);

    /// <summary>For sixteen.</summary>
    protected abstract void RunSixteen(Buffers pose);
}
