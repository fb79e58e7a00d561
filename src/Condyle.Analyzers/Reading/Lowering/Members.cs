using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace Condyle.Analyzers.Reading;

/// <summary>How fields and properties of the user's types are told apart.</summary>
internal static class Members
{
    public static string IdOf(IFieldSymbol field) => field.AssociatedSymbol is IPropertySymbol property ? IdOf(property) : Ids.Of(field.OriginalDefinition) ?? field.Name;

    /// <summary>Which item of a tuple a field of it is.</summary>
    public static string ItemOf(IFieldSymbol field)
    {
        var items = field.ContainingType.TupleElements;
        var item = items.IndexOf(field);
        if (item < 0)
            item = items.IndexOf(field.CorrespondingTupleField ?? field);
        if (item < 0 && int.TryParse(field.Name.Substring(Math.Min(4, field.Name.Length)), out var number))
            item = number - 1;
        return item.ToString(System.Globalization.CultureInfo.InvariantCulture);
    }

    public static string IdOf(IPropertySymbol property) => Ids.Of(property.OriginalDefinition) ?? property.Name;

    public static string IdOf(IEventSymbol raised) => Ids.Of(raised.OriginalDefinition) ?? raised.Name;

    /// <summary>Whether the compiler keeps an event's handlers.</summary>
    public static bool IsPlainEvent(IEventSymbol raised) => raised is { IsAbstract: false, IsPartialDefinition: false } && raised.ContainingType.TypeKind != TypeKind.Interface
        && raised.DeclaringSyntaxReferences.Any(reference => reference.GetSyntax() is VariableDeclaratorSyntax);

    /// <summary>Whether an event of the user's only keeps its handlers and nobody overrides it, so that it is its field.</summary>
    public static bool IsOnlyField(IEventSymbol raised) => IsPlainEvent(raised) && raised is { IsVirtual: false, IsOverride: false };

    /// <summary>Whether a property of the user's only holds a value and nobody overrides it, so that it is its field.</summary>
    public static bool IsPlainAuto(IPropertySymbol property) =>
        IsAuto(property) && !property.IsVirtual && !property.IsAbstract && !property.IsOverride && property.ContainingType.TypeKind != TypeKind.Interface;

    /// <summary>Whether the compiler makes a property's accessors.</summary>
    public static bool IsAuto(IPropertySymbol property) => !property.IsAbstract && (property.PartialImplementationPart ?? property).DeclaringSyntaxReferences.Any(reference => reference.GetSyntax() switch
    {
        PropertyDeclarationSyntax { ExpressionBody: null, AccessorList: { } accessors } => accessors.Accessors.All(accessor => accessor.Body is null && accessor.ExpressionBody is null),
        ParameterSyntax => true,
        _ => false,
    });

    /// <summary>The part of a partial member that has its code; the member itself where it isn't partial.</summary>
    public static IMethodSymbol Implementation(IMethodSymbol method)
    {
        if (method.AssociatedSymbol is IPropertySymbol { PartialImplementationPart: { } property })
            return (method.MethodKind == MethodKind.PropertyGet ? property.GetMethod : property.SetMethod) ?? method;
        if (method.AssociatedSymbol is IEventSymbol { PartialImplementationPart: { } raised })
            return (method.MethodKind == MethodKind.EventAdd ? raised.AddMethod : raised.RemoveMethod) ?? method;
        return method.PartialImplementationPart ?? method;
    }

    /// <summary>The field that keeps a parameter of a primary constructor: a record's property, or a field of its own.</summary>
    public static string FieldOf(IParameterSymbol parameter) =>
        parameter.ContainingType is { IsRecord: true } record
        && record.GetMembers(parameter.Name).OfType<IPropertySymbol>().FirstOrDefault() is { } property
        && property.DeclaringSyntaxReferences.Any(reference => reference.GetSyntax() is ParameterSyntax)
            ? IdOf(property)
            : "<" + parameter.Name + ">";
}
