using System.Globalization;
using System.Runtime.CompilerServices;
using Microsoft.CodeAnalysis;

namespace Condyle.Analyzers.Reading;

/// <summary>Makes the symbol-free keys of types.</summary>
internal static class TypeKeys
{
    private static readonly string CondyleName = typeof(RigDraft).Assembly.GetName().Name!;
    private static readonly Dictionary<string, Type> CondyleTypes = typeof(RigDraft).Assembly.GetExportedTypes().ToDictionary(type => type.FullName!);

    private static readonly Dictionary<string, Type> NumericsTypes = new[]
    {
        typeof(System.Numerics.Vector2), typeof(System.Numerics.Vector3), typeof(System.Numerics.Vector4),
        typeof(System.Numerics.Quaternion), typeof(System.Numerics.Matrix4x4), typeof(System.Numerics.Plane),
    }.ToDictionary(type => type.FullName!);

    // Neither whether a reference may be null nor what the items of a tuple are called makes another type.
    private static readonly SymbolDisplayFormat Names = SymbolDisplayFormat.CSharpErrorMessageFormat
        .RemoveMiscellaneousOptions(SymbolDisplayMiscellaneousOptions.IncludeNullableReferenceTypeModifier)
        .AddMiscellaneousOptions(SymbolDisplayMiscellaneousOptions.ExpandValueTuple);

    // Kept with the symbol that it was made of, and without one itself: it goes when the symbol's compilation goes, and that of a referenced
    // assembly serves every compilation that refers to it.
    private static readonly ConditionalWeakTable<ITypeSymbol, TypeKey> Types = new();
    private static readonly ConditionalWeakTable<IMethodSymbol, MethodRef> Methods = new();
    private static readonly TypeKey Unknown = new("object", TypeShape.Other) { IsReference = true };
    private static readonly TypeKey Void = new("void", TypeShape.Void);

    // All forms of a type that only say whether a reference may be null have the key of the definition.
    public static TypeKey Of(ITypeSymbol? type) => type switch
    {
        null => Unknown,
        INamedTypeSymbol { IsGenericType: false, IsTupleType: false, IsAnonymousType: false } => Types.GetValue(type.OriginalDefinition, Make),
        _ => Make(type),
    };

    private static TypeKey Make(ITypeSymbol type)
    {
        switch (type)
        {
            case IArrayTypeSymbol array: return OfArray(array);
            case ITypeParameterSymbol parameter: return new TypeKey(ParameterIdOf(parameter), TypeShape.Parameter) { IsReference = parameter.IsReferenceType, Name = parameter.Name };
        }

        var named = type as INamedTypeSymbol;
        if (type.OriginalDefinition.SpecialType == SpecialType.System_Nullable_T)
            return new TypeKey(NameOf(type), TypeShape.Nullable) { Element = Of(named!.TypeArguments[0]) };
        if (type.IsTupleType)
            return new TypeKey(NameOf(type), TypeShape.Tuple) { Arguments = [.. named!.TupleElements.Select(element => Of(element.Type))] };
        if (type.TypeKind == TypeKind.Enum)
        {
            return new TypeKey(NameOf(type), TypeShape.Enum)
            {
                Name = type.MetadataName,
                Definition = IdOf(type),
                IsFlags = type.GetAttributes().Any(attribute => attribute.AttributeClass?.Name == "FlagsAttribute"),
                Element = Of(named!.EnumUnderlyingType),
                Members = [.. type.GetMembers().OfType<IFieldSymbol>().Where(field => field.HasConstantValue).Select(field => new KeyValuePair<string, object>(field.Name, field.ConstantValue!))],
            };
        }

        if (ShapeOf(type.SpecialType) is { } primitive)
            return new TypeKey(NameOf(type), primitive) { IsReference = type.IsReferenceType, Name = type.MetadataName };
        var plain = PlainNameOf(type);
        if (CondyleTypes.TryGetValue(plain, out var condyle) && IsOfCondyle(type))
            return new TypeKey(NameOf(type), TypeShape.Condyle) { Host = condyle, IsReference = type.IsReferenceType, Name = type.MetadataName, Definition = IdOf(type) };
        if (NumericsTypes.TryGetValue(plain, out var numerics))
            return new TypeKey(NameOf(type), TypeShape.Numerics) { Host = numerics, Name = type.MetadataName, Definition = IdOf(type) };
        var shape = IsOfUser(type) || type.IsAnonymousType ? TypeShape.User : TypeShape.Other;
        return new TypeKey(shape == TypeShape.User ? IdOf(type) : NameOf(type), shape)
        {
            IsReference = type.IsReferenceType,
            Arguments = named is null ? [] : [.. ArgumentsOf(named)],
            Name = type.IsAnonymousType ? "" : type.MetadataName,
            Definition = IdOf(type),
        };
    }

    private static TypeKey OfArray(IArrayTypeSymbol array)
    {
        var element = Of(array.ElementType);
        return new TypeKey(NameOf(array), TypeShape.Array) { Element = element, IsReference = true, Rank = array.Rank, Name = $"{element.Name}[{new string(',', array.Rank - 1)}]" };
    }

    /// <summary>
    /// Whether a type is the user's. Where an editor has Condyle or another project open beside the rigs, its types have source too:
    /// Condyle's are called and never read, and of another project's the source counts as unknown, as it is in a build.
    /// </summary>
    public static bool IsOfUser(ITypeSymbol type) => !type.IsTupleType && type.Locations.Any(location => location.IsInSource) && !IsOfCondyle(type);

    /// <summary>The id by which a type of the user's is found again in a compilation.</summary>
    public static string IdOf(ITypeSymbol type) => type.IsAnonymousType
        ? "anonymous " + string.Join(",", type.GetMembers().OfType<IPropertySymbol>().Select(property => property.Name))
        : Ids.Of(type.OriginalDefinition) ?? NameOf(type);

    /// <summary>The id of a type parameter: no other type or method has the same one.</summary>
    public static string ParameterIdOf(ITypeParameterSymbol parameter) => parameter.DeclaringMethod is { } method
        ? $"{Ids.Of(method.OriginalDefinition) ?? method.Name}!{parameter.Name}"
        : $"{(parameter.DeclaringType is { } type ? IdOf(type) : "")}!{parameter.Name}";

    /// <summary>The ids of a type's parameters, those of the types around it first.</summary>
    public static IEnumerable<string> ParametersOf(INamedTypeSymbol type) =>
        (type.ContainingType is { } outer ? ParametersOf(outer) : []).Concat(type.OriginalDefinition.TypeParameters.Select(ParameterIdOf));

    /// <summary>What a type's parameters stand for, in the same order.</summary>
    public static IEnumerable<TypeKey> ArgumentsOf(INamedTypeSymbol type) =>
        (type.ContainingType is { } outer ? ArgumentsOf(outer) : []).Concat(type.TypeArguments.Select(Of));

    /// <summary>The full name without type arguments.</summary>
    public static string PlainNameOf(ITypeSymbol type)
    {
        var name = type.MetadataName;
        var tick = name.IndexOf('`');
        if (tick >= 0)
            name = name.Substring(0, tick);
        if (type.ContainingType is { } outer)
            return PlainNameOf(outer) + "." + name;
        return type.ContainingNamespace is { IsGlobalNamespace: false } space ? space.ToDisplayString() + "." + name : name;
    }

    public static MethodRef MethodOf(IMethodSymbol method) => IsDeclaredAsItIs(method) ? Methods.GetValue(method, Make) : Make(method);

    private static bool IsDeclaredAsItIs(IMethodSymbol method) =>
        !method.IsGenericMethod && method.MethodKind is not (MethodKind.LocalFunction or MethodKind.AnonymousFunction) && method.ContainingType is { IsGenericType: false, IsAnonymousType: false };

    private static MethodRef Make(IMethodSymbol method) => new(
        Ids.Of(method.OriginalDefinition) ?? method.Name,
        method.ContainingType is null ? "" : IsOfUser(method.ContainingType) ? IdOf(method.ContainingType) : PlainNameOf(method.ContainingType),
        method.Name)
    {
        Returns = method.MethodKind == MethodKind.Constructor ? Of(method.ContainingType) : method.ReturnsVoid ? Void : Of(method.ReturnType),
        IsStatic = method.IsStatic || method.MethodKind == MethodKind.Constructor,
        Owner = method.ContainingType is { } type && IsOfUser(type) ? Of(type) : null,
        IsDispatched = !method.IsStatic && (method.IsVirtual || method.IsAbstract || method.IsOverride || method.ContainingType?.TypeKind == TypeKind.Interface),
        TypeParameters = [.. method.ContainingType is { } owner ? ParametersOf(owner) : [], .. method.OriginalDefinition.TypeParameters.Select(ParameterIdOf)],
        TypeArguments = [.. method.ContainingType is { } constructed ? ArgumentsOf(constructed) : [], .. method.TypeArguments.Select(Of)],
        Parameters = [.. method.Parameters.Select(parameter => Of(parameter.Type))],
    };

    private static bool IsOfCondyle(ITypeSymbol type) => type.ContainingAssembly?.Name == CondyleName;

    /// <summary>Whether a type is one of Condyle's own.</summary>
    public static bool Is(ITypeSymbol? type, Type wanted) => type is INamedTypeSymbol && IsOfCondyle(type) && PlainNameOf(type) == wanted.FullName;

    /// <summary>The full name with type arguments.</summary>
    public static string NameOf(ITypeSymbol type) => type.ToDisplayString(Names).ToString(CultureInfo.InvariantCulture);

    private static TypeShape? ShapeOf(SpecialType type) => type switch
    {
        SpecialType.System_Void => TypeShape.Void,
        SpecialType.System_Boolean => TypeShape.Bool,
        SpecialType.System_Char => TypeShape.Char,
        SpecialType.System_SByte => TypeShape.SByte,
        SpecialType.System_Byte => TypeShape.Byte,
        SpecialType.System_Int16 => TypeShape.Int16,
        SpecialType.System_UInt16 => TypeShape.UInt16,
        SpecialType.System_Int32 => TypeShape.Int32,
        SpecialType.System_UInt32 => TypeShape.UInt32,
        // Programs run on 64 bits.
        SpecialType.System_Int64 or SpecialType.System_IntPtr => TypeShape.Int64,
        SpecialType.System_UInt64 or SpecialType.System_UIntPtr => TypeShape.UInt64,
        SpecialType.System_Single => TypeShape.Single,
        SpecialType.System_Double => TypeShape.Double,
        SpecialType.System_Decimal => TypeShape.Decimal,
        SpecialType.System_String => TypeShape.String,
        _ => null,
    };
}
