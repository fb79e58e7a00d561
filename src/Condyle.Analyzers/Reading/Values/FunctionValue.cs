namespace Condyle.Analyzers.Reading;

/// <summary>A delegate: one of the user's functions with what it captured, or a method of Condyle or the framework; or several of them.</summary>
internal sealed class FunctionValue(Func<Machine, object?[], object?> call)
{
    /// <summary>Makes the frame of a call, where it is one of the user's functions that can run on the machine's own stack.</summary>
    public Func<object?[], Waiting, Frame>? Start { get; init; }

    /// <summary>Whether its result comes in a task.</summary>
    public bool IsAsync { get; init; }

    /// <summary>The method with its receiver or what it captured, where it is made of a method group: two of the same are equal.</summary>
    public (object Method, IReadOnlyList<object?> Receivers)? Group { get; init; }

    /// <summary>The object that it is called on, and the places that it captures.</summary>
    public IReadOnlyList<object?> Reaches { get; init; } = [];

    /// <summary>How many arguments it takes.</summary>
    public int Takes { get; init; }

    /// <summary>The functions that it calls one after another; none where it is only itself.</summary>
    public IReadOnlyList<FunctionValue> Parts => parts ?? [this];

    private readonly IReadOnlyList<FunctionValue>? parts;

    private FunctionValue(IReadOnlyList<FunctionValue> parts)
        : this((machine, arguments) => parts.Aggregate((object?)null, (_, part) => part.Invoke(machine, [.. arguments])))
    {
        this.parts = parts;
        Takes = parts[0].Takes;
    }

    /// <summary>Calls it with its arguments and gives back what it returns.</summary>
    public object? Invoke(Machine machine, params object?[] arguments) => call(machine, arguments);

    /// <summary>The same where it is known what the caller does with the task that it may get.</summary>
    public object? InvokeAsync(Machine machine, Waiting waiting, params object?[] arguments) => Start is null ? call(machine, arguments)
        : Start(arguments, waiting) is var frame && IsAsync ? machine.RunAsync(frame)
        : machine.RunToEnd(frame);

    /// <summary>What <c>+</c> makes of two delegates.</summary>
    public static FunctionValue? Combine(FunctionValue? first, FunctionValue? second)
    {
        if (first is null || second is null)
            return first ?? second;
        var parts = first.Parts.Concat(second.Parts).ToList();
        return parts.Count <= Limits.Depth ? new FunctionValue(parts) : throw new ReadingStopped($"a delegate calls more than {Limits.Depth} functions");
    }

    /// <summary>What <c>-</c> makes of two delegates: the last stretch that is the second one is taken out.</summary>
    public static FunctionValue? Remove(FunctionValue? from, FunctionValue? removed)
    {
        if (from is null || removed is null)
            return from;
        var (all, sought) = (from.Parts, removed.Parts);
        for (var at = all.Count - sought.Count; at >= 0; at--)
        {
            if (!all.Skip(at).Take(sought.Count).SequenceEqual(sought))
                continue;
            var rest = all.Take(at).Concat(all.Skip(at + sought.Count)).ToList();
            return rest.Count switch { 0 => null, 1 => rest[0], _ => new FunctionValue(rest) };
        }

        return from;
    }

    public override bool Equals(object? other) => ReferenceEquals(this, other)
        || (other is FunctionValue function && (Group is { } own ? function.Group is { } group && own.Method.Equals(group.Method) && own.Receivers.SequenceEqual(group.Receivers, KnownEquality.Same)
            : parts is not null && function.parts is not null && parts.SequenceEqual(function.parts)));

    public override int GetHashCode() => Group?.Method.GetHashCode() ?? (parts is null ? base.GetHashCode() : parts.Count);
}
