namespace Condyle.Analyzers.Reading;

/// <summary>A method without its symbol.</summary>
internal sealed record MethodRef(string Id, string ContainingType, string Name)
{
    public TypeKey? Returns { get; init; }

    public bool IsStatic { get; init; }

    /// <summary>Whether the receiver's own type decides which method runs.</summary>
    public bool IsDispatched { get; init; }

    public IReadOnlyList<TypeKey> TypeArguments { get; init; } = [];

    public IReadOnlyList<string> TypeParameters { get; init; } = [];

    /// <summary>The types of its parameters.</summary>
    public IReadOnlyList<TypeKey> Parameters { get; init; } = [];
}
