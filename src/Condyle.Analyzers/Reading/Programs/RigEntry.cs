using Microsoft.CodeAnalysis;

namespace Condyle.Analyzers.Reading;

/// <summary>How the rig of a definition is made, without symbols: an object of its type, and the call of its <c>Define</c>.</summary>
internal sealed record RigEntry(string Id, string Name, TypeKey Type, MethodRef Define)
{
    /// <summary>The constructor that makes the object, and the types of its parameters; none where there is nothing to run.</summary>
    public MethodRef? Constructor { get; private init; }

    public static RigEntry Of(INamedTypeSymbol definition, IMethodSymbol define)
    {
        var constructor = definition.InstanceConstructors.OrderBy(candidate => candidate.Parameters.Length).FirstOrDefault(candidate => !IsCopy(candidate, definition));
        return new RigEntry(TypeKeys.IdOf(definition), definition.Name, TypeKeys.Of(definition), TypeKeys.MethodOf(define))
        {
            Constructor = constructor is null ? null : TypeKeys.MethodOf(constructor),
        };
    }

    private static bool IsCopy(IMethodSymbol constructor, INamedTypeSymbol type) =>
        type.IsRecord && constructor.Parameters.Length == 1 && SymbolEqualityComparer.Default.Equals(constructor.Parameters[0].Type, type);
}
