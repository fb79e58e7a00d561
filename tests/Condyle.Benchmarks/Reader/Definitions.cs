using Microsoft.CodeAnalysis;

namespace Condyle.Benchmarks.Reader;

/// <summary>The rig definitions of a generated project.</summary>
internal static class Definitions
{
    public static INamedTypeSymbol Contract(Compilation compilation) => compilation.GetTypeByMetadataName(typeof(IRigDefinition).FullName!)!;

    public static IEnumerable<(INamedTypeSymbol Type, IMethodSymbol Define)> In(Compilation compilation) =>
        from type in TypesIn(compilation.SourceModule.GlobalNamespace)
        where type.AllInterfaces.Contains(Contract(compilation), SymbolEqualityComparer.Default)
        select (type, type.GetMembers(nameof(IRigDefinition.Define)).OfType<IMethodSymbol>().Single());

    private static IEnumerable<INamedTypeSymbol> TypesIn(INamespaceSymbol space) => space.GetTypeMembers().Concat(space.GetNamespaceMembers().SelectMany(TypesIn));
}
