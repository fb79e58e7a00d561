namespace Condyle.Analyzers.Reporting;

/// <summary>Something that is worked out once, by whoever asks first; who asks meanwhile waits. When that is cancelled the next one works it out.</summary>
internal sealed class Once<T>
    where T : class
{
    private const int Patience = 20;
    private readonly object gate = new();
    private volatile T? value;

    public T Get(Func<T> make, CancellationToken cancellation)
    {
        while (!TryGet(make, Patience))
            cancellation.ThrowIfCancellationRequested();
        return value!;
    }

    /// <summary>As <see cref="Get"/>, but goes away when somebody else is at it.</summary>
    public bool TryGet(Func<T> make, int patience = 0)
    {
        if (value is not null)
            return true;
        if (!Monitor.TryEnter(gate, patience))
            return false;
        try
        {
            value ??= make();
            return true;
        }
        finally
        {
            Monitor.Exit(gate);
        }
    }
}
