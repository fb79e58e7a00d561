namespace Condyle.Analyzers.Reading;

/// <summary>What an async function gave, or will have given once it is waited for.</summary>
internal sealed class TaskValue(object? result, ThrownByCode? thrown = null)
{
    /// <summary>The result, or the exception for whoever awaits it.</summary>
    public object? Result => thrown is null ? result : throw thrown;

    public bool HasThrown => thrown is not null;

    /// <summary>Whether it may not be done yet.</summary>
    public bool MayBePending { get; init; }

    /// <summary>The same, or what comes of the task that it results in.</summary>
    public TaskValue OnAnotherThread() => thrown is null && result is TaskValue inner ? inner.OnAnotherThread() : new TaskValue(result, thrown) { MayBePending = true };

    public static TaskValue Of(Func<object?> run)
    {
        try
        {
            return new TaskValue(run());
        }
        catch (ThrownByCode thrown)
        {
            return new TaskValue(null, thrown);
        }
    }
}
