namespace Condyle.Analyzers.Reading;

/// <summary>What an async function gave: all that rig code waits for is there at once, so a task is done when it is made.</summary>
internal sealed class TaskValue(object? result, ThrownByCode? thrown = null)
{
    /// <summary>The result, or the exception for whoever awaits it.</summary>
    public object? Result => thrown is null ? result : throw thrown;

    public bool HasThrown => thrown is not null;

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
