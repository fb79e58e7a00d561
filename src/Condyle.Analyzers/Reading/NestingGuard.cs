using System.Runtime.CompilerServices;

namespace Condyle.Analyzers.Reading;

/// <summary>Stops a reading before code or values that lie too deep inside each other exhaust the stack of the host.</summary>
internal static class NestingGuard
{
    [ThreadStatic]
    private static int valueDepth;

    /// <summary>Asked wherever lowering goes one level deeper into the code.</summary>
    public static void Check()
    {
        try
        {
            RuntimeHelpers.EnsureSufficientExecutionStack();
        }
        catch (InsufficientExecutionStackException)
        {
            throw new ReadingStopped("code lies too deep inside itself");
        }
    }

    /// <summary>Goes one level deeper into a value, and out again when it is disposed.</summary>
    public static Level Deeper()
    {
        if (++valueDepth > Limits.ValueDepth)
        {
            valueDepth--;
            throw new ReadingStopped($"values lie more than {Limits.ValueDepth} deep inside each other");
        }

        return default;
    }

    internal readonly struct Level : IDisposable
    {
        public void Dispose() => valueDepth--;
    }
}
