namespace Condyle.Analyzers.Reading;

/// <summary>Tasks that are done when they are made.</summary>
internal static class TaskCalls
{
    private const string Space = "System.Threading.Tasks.";

    public static void Register()
    {
        foreach (var type in new[] { Space + "Task.", Space + "ValueTask." })
        {
            FrameworkTable.Open(type + "get_CompletedTask", (_, _) => new TaskValue(null));
            FrameworkTable.Open(type + "FromResult", (_, arguments) => new TaskValue(arguments[0]));
            FrameworkTable.Open(type + "FromException", (_, arguments) => new TaskValue(null, Thrown(arguments[0])));
            FrameworkTable.Open(type + "ConfigureAwait", (_, arguments) => arguments[0]);
            FrameworkTable.Open(type + "AsTask", (_, arguments) => arguments[0]);
            FrameworkTable.Open(type + "GetAwaiter", (_, arguments) => arguments[0]);
            FrameworkTable.Open(type + "get_Result", (_, arguments) => arguments[0] is TaskValue task ? task.Result : OpenValue.Any);
            FrameworkTable.Open(type + "Wait", (_, arguments) => arguments[0] is TaskValue task ? Waited(task) : null);
            FrameworkTable.Open(type + "get_IsCompleted", (_, arguments) => arguments[0] is TaskValue ? true : null);
            FrameworkTable.Open(type + "get_IsCompletedSuccessfully", (_, arguments) => arguments[0] is TaskValue task ? !task.HasThrown : null);
            FrameworkTable.Open(type + "get_IsFaulted", (_, arguments) => arguments[0] is TaskValue task ? task.HasThrown : null);
        }

        FrameworkTable.Open(Space + "ValueTask..ctor", (_, arguments) => arguments.Length == 0 ? new TaskValue(null) : arguments[0] is TaskValue task ? task : new TaskValue(arguments[0]));
        FrameworkTable.Open(Space + "Task.WhenAll", (machine, arguments) => WhenAll(machine, arguments));
        FrameworkTable.Open(Space + "Task.Run", (machine, arguments) => arguments[0] is FunctionValue function ? Run(machine, function) : OpenValue.Any);
        foreach (var awaiter in new[] { "TaskAwaiter.", "ValueTaskAwaiter.", "ConfiguredTaskAwaitable.ConfiguredTaskAwaiter.", "ConfiguredValueTaskAwaitable.ConfiguredValueTaskAwaiter." })
        {
            FrameworkTable.Open("System.Runtime.CompilerServices." + awaiter + "GetResult", (_, arguments) => arguments[0] is TaskValue task ? task.Result : OpenValue.Any);
            FrameworkTable.Open("System.Runtime.CompilerServices." + awaiter + "get_IsCompleted", (_, arguments) => arguments[0] is TaskValue ? true : null);
        }

        FrameworkTable.Open("System.Runtime.CompilerServices.ConfiguredTaskAwaitable.GetAwaiter", (_, arguments) => arguments[0]);
        FrameworkTable.Open("System.Runtime.CompilerServices.ConfiguredValueTaskAwaitable.GetAwaiter", (_, arguments) => arguments[0]);
    }

    private static ThrownByCode Thrown(object? exception) => exception is ObjectValue own
        ? new ThrownByCode(own.Type.Id, "", own)
        : new ThrownByCode((exception as ExceptionValue)?.Type ?? "System.Exception", "", exception);

    // What waits without awaiting gets the exception wrapped.
    private static object? Waited(TaskValue task) => task.HasThrown ? throw new ThrownByCode("System.AggregateException", "A task failed.") : null;

    private static object? Run(Machine machine, FunctionValue function)
    {
        var task = TaskValue.Of(() => function.Invoke(machine));
        return task is { HasThrown: false, Result: TaskValue inner } ? inner : task;
    }

    private static object? WhenAll(Machine machine, object?[] arguments)
    {
        if ((arguments.Length == 1 && arguments[0] is not TaskValue ? Sequences.ListOf(arguments[0], machine) : [.. arguments]) is not { } tasks || tasks.Exists(task => task is not TaskValue))
            return OpenValue.Any;
        var done = tasks.Cast<TaskValue>().ToList();
        return done.Find(task => task.HasThrown) ?? new TaskValue(new ArrayValue([.. done.Select(task => task.Result)]));
    }
}
