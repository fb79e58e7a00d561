using Microsoft.CodeAnalysis;

namespace Condyle.Analyzers.Reading;

/// <summary>How the rig of a definition is made, without symbols: an object of its type, and the call of its <c>Define</c>.</summary>
internal sealed record RigEntry(string Id, string Name, TypeKey Type, MethodRef Define)
{
    /// <summary>The constructors that can make the object, the shortest first.</summary>
    public IReadOnlyList<MethodRef> Constructors { get; private init; } = [];

    public static RigEntry Of(INamedTypeSymbol definition, IMethodSymbol define) =>
        new(TypeKeys.IdOf(definition), definition.Name, TypeKeys.Of(definition), TypeKeys.MethodOf(define))
        {
            Constructors = [.. definition.InstanceConstructors.Where(candidate => !IsCopy(candidate, definition)).OrderBy(candidate => candidate.Parameters.Length).Select(TypeKeys.MethodOf)],
        };

    private static bool IsCopy(IMethodSymbol constructor, INamedTypeSymbol type) =>
        type.IsRecord && constructor.Parameters.Length == 1 && SymbolEqualityComparer.Default.Equals(constructor.Parameters[0].Type, type);
}
