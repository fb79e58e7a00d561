namespace Condyle.Analyzers.Reading;

/// <summary>Tasks, most of which are done when they are made.</summary>
internal static class TaskCalls
{
    private const string Space = "System.Threading.Tasks.";

    public static void Register()
    {
        NeverCancelled();
        foreach (var type in new[] { Space + "Task", Space + "ValueTask" })
        {
            FrameworkTable.Add(type, "get_CompletedTask", _ => new TaskValue(null));
            FrameworkTable.Add(type, "FromResult", call => new TaskValue(call[0]));
            FrameworkTable.Add(type, "FromException", call => new TaskValue(null, Thrown(call[0])));
            FrameworkTable.Add(type, "ConfigureAwait", call => call[0]);
            FrameworkTable.Add(type, "AsTask", call => call[0]);
            FrameworkTable.Add(type, "GetAwaiter", call => call[0]);
            FrameworkTable.Add(type, "get_Result", call => call[0] is TaskValue task ? ResultOf(task, type) : OpenValue.Any);
            FrameworkTable.Add(type, "Wait", call => call[0] is TaskValue task ? Waited(task) : null);
            FrameworkTable.Add(type, "get_IsCompleted", call => call[0] is TaskValue { MayBePending: false } ? true : null);
            FrameworkTable.Add(type, "get_IsCompletedSuccessfully", call => call[0] is TaskValue { MayBePending: false } task ? !task.HasThrown : null);
            FrameworkTable.Add(type, "get_Exception", call => call[0] is not TaskValue { MayBePending: false } task ? OpenValue.Any : task.HasThrown ? ExceptionValue.ForAll(task.Exceptions) : null);
            FrameworkTable.Add(type, "get_IsFaulted", call => call[0] is TaskValue { MayBePending: false } task ? task.HasThrown : null);
        }

        FrameworkTable.Add(Space + "Task", "Yield", _ => new TaskValue(null) { MayBePending = true });
        FrameworkTable.Add(Space + "Task", "Delay", call => call.Count == 1 && call[0] is >= 0 ? new TaskValue(null) { MayBePending = true } : throw call.Unknown());
        FrameworkTable.Add(Space + "TaskAsyncEnumerableExtensions", "ConfigureAwait", call => call[0]);
        FrameworkTable.Add(Space + "ValueTask", ".ctor", call => call.Count == 0 ? new TaskValue(null) : call[0] is TaskValue task ? task : new TaskValue(call[0]));
        FrameworkTable.Add(Space + "Task", "WhenAll", call => WhenAll(call.Machine, call.Arguments));
        FrameworkTable.Add(Space + "Task", "Run", call => call[0] is FunctionValue function ? call.Machine.RunElsewhere(function, call.Method.Waiting) : OpenValue.Any);
        foreach (var awaiter in new[] { "TaskAwaiter", "ValueTaskAwaiter", "ConfiguredTaskAwaitable.ConfiguredTaskAwaiter", "ConfiguredValueTaskAwaitable.ConfiguredValueTaskAwaiter" })
        {
            FrameworkTable.Add("System.Runtime.CompilerServices." + awaiter, "GetResult", call => call[0] is TaskValue task ? task.Result : OpenValue.Any);
            FrameworkTable.Add("System.Runtime.CompilerServices." + awaiter, "get_IsCompleted", call => call[0] is TaskValue { MayBePending: false } ? true : null);
        }

        FrameworkTable.Add("System.Runtime.CompilerServices.ConfiguredTaskAwaitable", "GetAwaiter", call => call[0]);
        FrameworkTable.Add("System.Runtime.CompilerServices.ConfiguredValueTaskAwaitable", "GetAwaiter", call => call[0]);
    }

    // A token that nobody can cancel; of those that a source gives nothing is known.
    private static void NeverCancelled()
    {
        const string token = "System.Threading.CancellationToken";
        FrameworkTable.Add(token, "get_None", _ => Defaults.NoToken);
        FrameworkTable.Add(token, ".ctor", call => call[0] is false ? Defaults.NoToken : OpenValue.Any);
        foreach (var name in new[] { "get_IsCancellationRequested", "get_CanBeCanceled" })
            FrameworkTable.Add(token, name, call => ReferenceEquals(call[0], Defaults.NoToken) ? false : null);
        FrameworkTable.Add(token, "ThrowIfCancellationRequested", _ => null);
    }

    private static ThrownByCode Thrown(object? exception) => exception is ObjectValue own
        ? new ThrownByCode(own.Type.Id, "", own)
        : new ThrownByCode((exception as ExceptionValue)?.Type ?? "System.Exception", "", exception);

    // What waits without awaiting gets the exception wrapped.
    private static object? Waited(TaskValue task) => task.HasThrown ? throw new ThrownByCode(ExceptionValue.Several, "A task failed.", ExceptionValue.ForAll(task.Exceptions)) : null;

    private static object? ResultOf(TaskValue task, string type) => task.HasThrown && type == Space + "Task" ? Waited(task) : task.Result;

    private static object? WhenAll(Machine machine, object?[] arguments)
    {
        if ((arguments.Length == 1 && arguments[0] is not TaskValue ? Sequences.ListOf(arguments[0], machine) : [.. arguments]) is not { } tasks || tasks.Exists(task => task is not TaskValue))
            return OpenValue.Any;
        return TaskValue.ForAll([.. tasks.Cast<TaskValue>()]);
    }
}
