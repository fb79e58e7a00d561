using System.Runtime.CompilerServices;

namespace Condyle.Analyzers.Reporting;

/// <summary>Something that is worked out once, by whoever asks first; who asks meanwhile waits. When that is cancelled the next one works it out.</summary>
internal sealed class Once<T>
{
    private const int Patience = 20;
    private readonly object gate = new();
    private volatile StrongBox<T>? made;

    public T Get(Func<T> make, CancellationToken cancellation)
    {
        while (!TryGet(make, Patience))
            cancellation.ThrowIfCancellationRequested();
        return made!.Value;
    }

    /// <summary>As <see cref="Get"/>, but goes away when somebody else is at it.</summary>
    public bool TryGet(Func<T> make, int patience = 0)
    {
        if (made is not null)
            return true;
        if (!Monitor.TryEnter(gate, patience))
            return false;
        try
        {
            made ??= new(make());
            return true;
        }
        finally
        {
            Monitor.Exit(gate);
        }
    }
}
