namespace Condyle.Analyzers.Reading;

/// <summary>A method without its symbol.</summary>
internal sealed record MethodRef(string Id, string ContainingType, string Name)
{
    public TypeKey? Returns { get; init; }

    /// <summary>The user's own type that it belongs to.</summary>
    public TypeKey? Owner { get; init; }

    public bool IsStatic { get; init; }

    /// <summary>Whether the receiver's own type decides which method runs.</summary>
    public bool IsDispatched { get; init; }

    /// <summary>What the code that calls it does with the task that it may get.</summary>
    public Waiting Waiting { get; init; }

    /// <summary>The type parameter whose static member is called: what it stands for decides which method runs.</summary>
    public TypeKey? On { get; init; }

    /// <summary>What the parameters of the types around it and its own stand for.</summary>
    public IReadOnlyList<TypeKey> TypeArguments { get; init; } = [];

    public IReadOnlyList<string> TypeParameters { get; init; } = [];

    /// <summary>The types of its parameters.</summary>
    public IReadOnlyList<TypeKey> Parameters { get; init; } = [];

    public bool HasParameters => On is not null || Returns is { HasParameters: true } || TypeArguments.Any(argument => argument.HasParameters) || Parameters.Any(parameter => parameter.HasParameters);
}
