using Microsoft.CodeAnalysis;

namespace Condyle.Analyzers.Reading;

internal enum BodyKind
{
    Method,

    /// <summary>A constructor, with the initialisers of its type.</summary>
    Constructor,

    /// <summary>The static initialisers of one part of a type.</summary>
    StaticInitialisers,
    StaticConstructor,
}

/// <summary>Where a body stands, without symbols.</summary>
/// <param name="kind">What it is the body of.</param>
/// <param name="id">The id of the method; of the type for static initialisers.</param>
/// <param name="tree">The file.</param>
/// <param name="part">Which of the type's parts in the file holds the static initialisers.</param>
internal sealed class BodyPlace(BodyKind kind, string id, SyntaxTree tree, int part = 0)
{
    // The file may be typed in while this is kept, and must not live on because of it.
    private readonly WeakReference<SyntaxTree> tree = new(tree);

    public BodyKind Kind { get; } = kind;

    public string Id { get; } = id;

    public int Part { get; } = part;

    public string Path { get; } = tree.FilePath;

    /// <summary>What tells the body from all others of its file.</summary>
    public (BodyKind, string, int) Key => (Kind, Id, Part);

    /// <summary>The file as it is in a compilation.</summary>
    public SyntaxTree? TreeIn(Compilation compilation, CodeCache cache) =>
        tree.TryGetTarget(out var same) && compilation.ContainsSyntaxTree(same) ? same : cache.TreeAt(Path, compilation);
}
