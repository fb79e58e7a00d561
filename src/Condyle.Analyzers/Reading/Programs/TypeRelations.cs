using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;

namespace Condyle.Analyzers.Reading;

/// <summary>Which types are others as well, by the compiler's own rules: bases, interfaces, variance, boxing.</summary>
internal sealed class TypeRelations(Compilation compilation, Func<string, ISymbol?> find)
{
    private readonly Dictionary<(TypeKey Own, TypeKey Wanted), bool?> known = [];

    /// <summary>Whether a value of a type is of another one; none when one of them isn't found.</summary>
    public bool? Is(TypeKey own, TypeKey wanted)
    {
        if (!known.TryGetValue((own, wanted), out var answer))
            known[(own, wanted)] = answer = SymbolOf(own) is { } from && SymbolOf(wanted) is { } to ? Converts(from, to) : null;
        return answer;
    }

    private bool Converts(ITypeSymbol from, ITypeSymbol to) =>
        compilation.ClassifyConversion(from, to) is { IsUserDefined: false } conversion && (conversion.IsIdentity || (conversion.IsImplicit && (conversion.IsReference || conversion.IsBoxing)));

    private ITypeSymbol? SymbolOf(TypeKey type) => type.Shape switch
    {
        TypeShape.Parameter => null,
        TypeShape.Array => type.Element is { } element && SymbolOf(element) is { } item ? compilation.CreateArrayTypeSymbol(item, type.Rank) : null,
        TypeShape.Nullable => type.Element is { } element && SymbolOf(element) is { } value ? compilation.GetSpecialType(SpecialType.System_Nullable_T).Construct(value) : null,
        TypeShape.Tuple => All(type.Arguments) is { Length: > 1 } items ? compilation.CreateTupleTypeSymbol([.. items]) : null,
        TypeShape.Bool => compilation.GetSpecialType(SpecialType.System_Boolean),
        >= TypeShape.Char and <= TypeShape.String => compilation.GetTypeByMetadataName("System." + type.Name),
        _ when type.Id == "object" => compilation.GetSpecialType(SpecialType.System_Object),
        _ => find(type.Definition) is INamedTypeSymbol named ? Constructed(named, type.Arguments) : null,
    };

    private ITypeSymbol? Constructed(INamedTypeSymbol named, IReadOnlyList<TypeKey> arguments) =>
        named.Arity == 0 && arguments.Count == 0 ? named
        : named.Arity == arguments.Count && All(arguments) is { } all ? named.Construct(all)
        : null;

    private ITypeSymbol[]? All(IReadOnlyList<TypeKey> types)
    {
        var symbols = types.Select(SymbolOf).ToList();
        return symbols.Contains(null) ? null : [.. symbols.Select(symbol => symbol!)];
    }
}
