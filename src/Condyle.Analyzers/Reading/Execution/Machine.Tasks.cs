namespace Condyle.Analyzers.Reading;

/// <summary>
/// Async functions. What they await is mostly there already, so they are read to their end where they are called. Where that isn't sure, and the caller
/// doesn't wait either, the rest happens at some later time, if at all.
/// </summary>
internal sealed partial class Machine
{
    /// <summary>Runs an async function and gives back its task.</summary>
    public TaskValue RunAsync(Frame frame)
    {
        frame.IsAwaitedByNobody = frame.Waiting switch
        {
            Waiting.Blocks => false,
            Waiting.Awaits => AsyncCaller is { IsAwaitedByNobody: true, IsLeft: false },
            _ => true,
        };
        try
        {
            var result = RunToEnd(frame);
            return new TaskValue(result, frame.Thrown) { MayBePending = frame.HasWaited };
        }
        catch (ThrownByCode thrown)
        {
            return new TaskValue(null, thrown) { MayBePending = frame.HasWaited };
        }
    }

    /// <summary>Awaits a task that may not be done yet: who called the function may go on from here before the rest of it runs.</summary>
    public void WaitIn(Frame frame)
    {
        frame.HasWaited = true;
        if (!frame.IsAwaitedByNobody || frame.IsLeft)
            return;
        frame.IsLeft = true;
        var rest = Later([frame], () => Try(frame, frame.Position, [], frame.CopyStack()));
        frame.Thrown = rest.Thrown;
        Return(frame, rest.Result);
    }

    /// <summary>Runs a function on another thread and gives back its task.</summary>
    public TaskValue RunElsewhere(FunctionValue function, Waiting waiting)
    {
        waiting = waiting == Waiting.Returns && top is { } caller ? caller.Waiting : waiting;
        var isWaitedFor = waiting == Waiting.Blocks || (waiting == Waiting.Awaits && AsyncCaller is not { IsAwaitedByNobody: true, IsLeft: false });
        TaskValue Run() => TaskValue.Of(() => function.InvokeAsync(this, Waiting.Blocks));
        return (isWaitedFor ? Run() : Later([function], Run)).OnAnotherThread();
    }

    private Frame? AsyncCaller
    {
        get
        {
            var frame = top;
            while (frame is { Body.IsAsync: false })
                frame = frame.Caller;
            return frame;
        }
    }

    // Until it runs, all that it shares with others may change, and what it changes may not have changed yet.
    private T Later<T>(IEnumerable<object> shared, Func<T> run)
    {
        BeginSpeculation();
        var outer = Draft.Log.Scope;
        var assumed = assumptions.Mark;
        var before = Journal.Mark();
        Lost.Open(Reach.From([.. shared, .. Statics], budget));
        var begun = Journal.Mark();
        Draft.Log.Scope = ++scopes;
        var running = top;
        T result;
        try
        {
            result = run();
        }
        finally
        {
            top = running;
            assumptions.ForgetTo(assumed);
        }

        var written = Journal.Since(begun);
        Journal.UndoTo(before);
        foreach (var entry in written)
            entry.Open(this);
        Draft.Log.Scope = outer;
        Journal.Release();
        Journal.Release();
        speculation--;
        return result;
    }
}
