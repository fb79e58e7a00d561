namespace Condyle.Analyzers.Reading;

/// <summary>What an async function gave, or will have given once it is waited for.</summary>
internal sealed class TaskValue(object? result, ThrownByCode? thrown = null)
{
    private readonly ThrownByCode? thrown = thrown;

    /// <summary>The result, or the exception for whoever awaits it.</summary>
    public object? Result => thrown is null ? result : throw thrown;

    public bool HasThrown => thrown is not null;

    /// <summary>What else was thrown, where it stands for several tasks.</summary>
    public IReadOnlyList<ThrownByCode> AlsoThrown { get; init; } = [];

    /// <summary>The exceptions that were thrown.</summary>
    public IEnumerable<object?> Exceptions => thrown is null ? [] : new[] { thrown }.Concat(AlsoThrown).Select(one => one.Value ?? ExceptionValue.OfFramework(one.Type));

    /// <summary>Whether it may not be done yet.</summary>
    public bool MayBePending { get; init; }

    /// <summary>The same, or what comes of the task that it results in.</summary>
    public TaskValue OnAnotherThread() => thrown is null && result is TaskValue inner ? inner.OnAnotherThread() : new TaskValue(result, thrown) { MayBePending = true, AlsoThrown = AlsoThrown };

    /// <summary>What stands for several: all their results, or all that they threw.</summary>
    public static TaskValue ForAll(IReadOnlyList<TaskValue> tasks)
    {
        List<ThrownByCode> failed = [.. tasks.SelectMany(task => task.thrown is { } first ? [first, .. task.AlsoThrown] : Enumerable.Empty<ThrownByCode>())];
        return new TaskValue(failed.Count > 0 ? null : new ArrayValue([.. tasks.Select(task => task.Result)]), failed.FirstOrDefault())
        {
            AlsoThrown = [.. failed.Skip(1)],
            MayBePending = tasks.Any(task => task.MayBePending),
        };
    }

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
