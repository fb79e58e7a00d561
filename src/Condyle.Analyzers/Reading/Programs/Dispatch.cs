using Microsoft.CodeAnalysis;

namespace Condyle.Analyzers.Reading;

/// <summary>Finds the method that a virtual or interface call runs.</summary>
internal static class Dispatch
{
    public static IMethodSymbol? Find(INamedTypeSymbol type, IMethodSymbol called)
    {
        if (called.ContainingType.TypeKind == TypeKind.Interface)
        {
            // A generic interface is looked up by its definition: the type's own construction of it is the one that counts.
            foreach (var implemented in type.AllInterfaces.Where(candidate => SymbolEqualityComparer.Default.Equals(candidate.OriginalDefinition, called.ContainingType.OriginalDefinition)))
            {
                var member = implemented.GetMembers(called.Name).OfType<IMethodSymbol>().FirstOrDefault(candidate => SymbolEqualityComparer.Default.Equals(candidate.OriginalDefinition, called.OriginalDefinition));
                if (member is null)
                    continue;
                var implementation = type.FindImplementationForInterfaceMember(member) as IMethodSymbol;
                return implementation is { IsVirtual: true } or { IsAbstract: true } or { IsOverride: true } && implementation.ContainingType.TypeKind != TypeKind.Interface
                    ? Find(type, implementation)
                    : implementation;
            }

            return null;
        }

        for (var candidate = type; candidate is not null; candidate = candidate.BaseType)
        {
            foreach (var method in candidate.GetMembers(called.Name).OfType<IMethodSymbol>())
            {
                for (var overridden = method; overridden is not null; overridden = overridden.OverriddenMethod)
                {
                    if (SymbolEqualityComparer.Default.Equals(overridden.OriginalDefinition, called.OriginalDefinition))
                        return method;
                }
            }
        }

        return null;
    }

    /// <summary>A type, its bases and its interfaces.</summary>
    public static IEnumerable<INamedTypeSymbol> BasesOf(INamedTypeSymbol type)
    {
        for (var candidate = type; candidate is not null; candidate = candidate.BaseType)
            yield return candidate;
        foreach (var implemented in type.AllInterfaces)
            yield return implemented;
    }
}
