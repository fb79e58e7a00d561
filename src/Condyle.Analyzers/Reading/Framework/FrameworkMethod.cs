namespace Condyle.Analyzers.Reading;

/// <summary>A method of the framework as the reading does it.</summary>
/// <param name="Run">
/// What it does. It may throw <see cref="AnswerIsOpen"/>, or return <see cref="OpenValue.Any"/>; <c>null</c> stands for an answer that
/// isn't known where the method returns a value type.
/// </param>
internal sealed record FrameworkMethod(Func<Invocation, object?> Run)
{
    /// <summary>Whether its answer is unknown as soon as the receiver or an argument is.</summary>
    public bool NeedsAll { get; init; }

    /// <summary>Whether it changes its receiver, which isn't known any more where it is unknown how.</summary>
    public bool Changes { get; init; }

    public object? Call(Invocation call)
    {
        var machine = call.Machine;
        // What is only stored needn't be decided: whoever uses it does that.
        for (var i = 0; i < call.Count && !Changes; i++)
            call.Arguments[i] = machine.Decide(call.Arguments[i]);
        if (NeedsAll && !call.Arguments.All(KnownEquality.IsKnown))
            return Unanswered(call, call.Unknown());
        try
        {
            return Run(call);
        }
        catch (AnswerIsOpen open)
        {
            return Unanswered(call, open);
        }
    }

    private object Unanswered(Invocation call, AnswerIsOpen open)
    {
        var machine = call.Machine;
        for (var i = 0; i < call.Count; i++)
        {
            machine.Lost.Add(call[i]);
            if (call[i] is OpenValue)
                machine.Lost.Enumerate();
            switch (call[i])
            {
                case Cell:
                    call.Out(i, Opens.Of(call.ParameterOf(i), machine, canFork: true));
                    break;
                case FunctionValue function:
                    machine.AnyNumberOfTimes(() => OpenCalls.Invoke(function, call, i));
                    break;
                case OpenSequence sequence:
                    machine.AnyNumberOfTimes(() => sequence.Item());
                    break;
                case OpenValue when OpenCalls.IsFunction(call, i):
                    UnknownCode.Touch(machine, Sequences.CanBeRead(call[0], machine) ? Sequences.ListOf(call[0], machine) ?? [] : [], machine.Here, "a delegate", UnknownCode.NotKnownWhich);
                    break;
                case SequenceValue or EnumeratorValue { RunsCode: true }:
                    machine.Expose(call[i]);
                    machine.Lose(machine.Here, open.Message);
                    break;
                case ObjectValue:
                    machine.Expose(call[i]);
                    break;
            }
        }

        machine.MayThrow(open.Message);
        if (!Changes)
            return OpenValue.Any;
        Open(machine, call[0]);
        if (call[0] is HashedValue hashed)
            SureKeys.Change(hashed, call);

        // What hands itself on is still itself.
        return call[0] is IFrameworkValue own && call.Method.Returns is { } returns && own.TypeName.EndsWith("." + returns.PlainName, StringComparison.Ordinal) ? own : OpenValue.Any;
    }

    private static void Open(Machine machine, object? receiver)
    {
        switch (receiver)
        {
            case ICollectionValue collection:
                machine.Journal.Open(collection);
                break;
            case IStretch:
                Elements.Lose(receiver, machine);
                break;
        }
    }
}
