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

    /// <summary>The members by which code elsewhere can run code of a type: what it overrides or implements that isn't the user's own, and its properties.</summary>
    public static IEnumerable<IMethodSymbol> ExposedMembersOf(INamedTypeSymbol type)
    {
        var own = BasesOf(type).Where(candidate => candidate.TypeKind != TypeKind.Interface && TypeKeys.IsOfUser(candidate)).SelectMany(candidate => candidate.GetMembers()).OfType<IMethodSymbol>().Where(IsOfOthers);
        var implemented = type.AllInterfaces.Where(contract => !TypeKeys.IsOfUser(contract) && contract.Name != "IRigDefinition")
            .SelectMany(contract => contract.GetMembers()).Select(type.FindImplementationForInterfaceMember).OfType<IMethodSymbol>().Where(method => TypeKeys.IsOfUser(method.ContainingType));
        return own.Concat(implemented).Where(method => method is { IsImplicitlyDeclared: false, IsStatic: false, IsAbstract: false }).Distinct<IMethodSymbol>(SymbolEqualityComparer.Default);
    }

    private static bool IsOfOthers(IMethodSymbol method)
    {
        if (method is { MethodKind: MethodKind.PropertyGet, DeclaredAccessibility: Accessibility.Public, AssociatedSymbol: IPropertySymbol property })
            return !Members.IsAuto(property);
        var first = method;
        while (first.OverriddenMethod is { } overridden)
            first = overridden;
        return !TypeKeys.IsOfUser(first.ContainingType);
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
