using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace Condyle.Analyzers.Reading;

/// <summary>How fields and properties of the user's types are told apart.</summary>
internal static class Members
{
    public static string IdOf(IFieldSymbol field) => field.AssociatedSymbol is IPropertySymbol property ? IdOf(property) : field.OriginalDefinition.GetDocumentationCommentId() ?? field.Name;

    public static string IdOf(IPropertySymbol property) => property.OriginalDefinition.GetDocumentationCommentId() ?? property.Name;

    /// <summary>Whether a property of the user's only holds a value and nobody overrides it, so that it is its field.</summary>
    public static bool IsPlainAuto(IPropertySymbol property) =>
        IsAuto(property) && !property.IsVirtual && !property.IsAbstract && !property.IsOverride && property.ContainingType.TypeKind != TypeKind.Interface;

    /// <summary>Whether the compiler makes a property's accessors.</summary>
    public static bool IsAuto(IPropertySymbol property) => !property.IsAbstract && property.DeclaringSyntaxReferences.Any(reference => reference.GetSyntax() switch
    {
        PropertyDeclarationSyntax { ExpressionBody: null, AccessorList: { } accessors } => accessors.Accessors.All(accessor => accessor.Body is null && accessor.ExpressionBody is null),
        ParameterSyntax => true,
        _ => false,
    });

    /// <summary>The field that keeps a parameter of a primary constructor: a record's property, or a field of its own.</summary>
    public static string FieldOf(IParameterSymbol parameter) =>
        parameter.ContainingType is { IsRecord: true } record
        && record.GetMembers(parameter.Name).OfType<IPropertySymbol>().FirstOrDefault() is { } property
        && property.DeclaringSyntaxReferences.Any(reference => reference.GetSyntax() is ParameterSyntax)
            ? IdOf(property)
            : "<" + parameter.Name + ">";
}
