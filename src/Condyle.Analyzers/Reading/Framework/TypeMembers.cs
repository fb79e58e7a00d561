namespace Condyle.Analyzers.Reading;

/// <summary>Puts the instance members of a type of the framework into the table. A receiver whose contents aren't known gives open answers.</summary>
/// <typeparam name="T">The interpreter's value for the type.</typeparam>
internal sealed class TypeMembers<T>(string type)
    where T : class
{
    /// <summary>A constructor.</summary>
    public TypeMembers<T> Makes(Func<Invocation, object?> run)
    {
        FrameworkTable.Add(type, ".ctor", new FrameworkMethod(run));
        return this;
    }

    /// <summary>A member that changes nothing.</summary>
    public TypeMembers<T> Asks(string name, Func<T, Invocation, object?> run)
    {
        FrameworkTable.Add(type, name, new FrameworkMethod(call => call[0] is HashedValue { IsOpen: true } open && SureKeys.TryAnswer(open, call, out var sure) ? sure : run(Known(call), call)));
        return this;
    }

    /// <summary>A member that changes the receiver.</summary>
    public TypeMembers<T> Changes(string name, Func<T, Invocation, object?> run)
    {
        FrameworkTable.Add(type, name, new FrameworkMethod(call =>
        {
            if (call[0] is ICollectionValue { IsOpen: true })
                return WhileOpen(call);
            var known = Known(call);
            Note(call);
            return run(known, call);
        })
        {
            Changes = true,
        });
        return this;
    }

    /// <summary>A member after which the receiver is known, whatever it was before.</summary>
    public TypeMembers<T> Resets(string name, Func<T, Invocation, object?> run)
    {
        FrameworkTable.Add(type, name, new FrameworkMethod(call =>
        {
            var receiver = call[0] as T ?? throw call.Unknown();
            Note(call);
            if (receiver is ICollectionValue collection)
                collection.IsOpen = false;
            return run(receiver, call);
        })
        {
            Changes = true,
        });
        return this;
    }

    private static T Known(Invocation call) => call[0] is T known and not ICollectionValue { IsOpen: true } ? known : throw call.Unknown();

    private static void Note(Invocation call)
    {
        if (call[0] is ICollectionValue collection)
            call.Machine.Journal.Changing(collection);
    }

    // What isn't known stays so, but a query that is handed over runs all the same.
    private static object WhileOpen(Invocation call)
    {
        call.Machine.MayThrow($"'{call.Method.Name}' may fail");
        Note(call);
        for (var i = 1; i < call.Count; i++)
        {
            call.Machine.Lost.Add(call[i]);
            switch (call[i])
            {
                case SequenceValue: Sequences.ListOf(call[i], call.Machine); break;
                case FunctionValue: throw call.Unknown();
                case Cell: call.Out(i, OpenValue.Any); break;
            }
        }

        if (call[0] is HashedValue hashed)
            SureKeys.Change(hashed, call);
        return OpenValue.Any;
    }
}
