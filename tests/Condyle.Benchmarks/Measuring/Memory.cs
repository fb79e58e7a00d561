namespace Condyle.Benchmarks.Measuring;

/// <summary>What the heap holds.</summary>
internal static class Memory
{
    /// <summary>Lets go of everything that nobody can reach.</summary>
    public static void Settle()
    {
        GC.Collect();
        GC.WaitForPendingFinalizers();
        GC.Collect();
    }

    /// <summary>The bytes that somebody can reach.</summary>
    public static long Held()
    {
        // What hangs on a weak table's key, and that on another one's, goes one collection after the other.
        for (var i = 0; i < 3; i++)
            Settle();
        return GC.GetTotalMemory(forceFullCollection: true);
    }

    /// <summary>The bytes that some work allocates on this thread.</summary>
    public static long AllocatedBy(Action work)
    {
        var before = GC.GetAllocatedBytesForCurrentThread();
        work();
        return GC.GetAllocatedBytesForCurrentThread() - before;
    }
}
