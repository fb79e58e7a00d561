using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace Condyle.Analyzers.Reporting;

/// <summary>
/// What code may do besides giving a value: set something, say a sentence of a rig, write to a console. Where it does nothing else it may be left out, or said once more.
/// </summary>
internal static class CodeEffects
{
    /// <summary>Types of the framework whose static methods only give values.</summary>
    private static readonly HashSet<string> PlainTypes = ["System.Math", "System.MathF", "System.Linq.Enumerable"];

    /// <summary>Namespaces of which an object can be made and nothing else happens.</summary>
    private static readonly HashSet<string> PlainSpaces = [nameof(Condyle), "System.Numerics", "System.Collections.Generic"];

    /// <summary>Whether anything in a piece of code may do something.</summary>
    public static bool AreIn(SyntaxNode code, SemanticModel model) => code.DescendantNodesAndSelf().Any(node => IsOne(node, model));

    /// <summary>Whether a node of code by itself may do something; what it is made of isn't asked.</summary>
    public static bool IsOne(SyntaxNode node, SemanticModel model) => RunsUnseen(node, model) || node switch
    {
        AssignmentExpressionSyntax => node.Parent is not InitializerExpressionSyntax,
        AwaitExpressionSyntax or ThrowExpressionSyntax => true,
        SingleVariableDesignationSyntax => node.Parent is PatternSyntax or DeclarationExpressionSyntax { Parent: ArgumentSyntax }, // which other code may ask
        PrefixUnaryExpressionSyntax or PostfixUnaryExpressionSyntax => IsStep(node) || IsOfTheTeam(model.GetSymbolInfo(node).Symbol),
        BinaryExpressionSyntax => IsOfTheTeam(model.GetSymbolInfo(node).Symbol),
        BaseObjectCreationExpressionSyntax => !(model.GetTypeInfo(node).Type is { DeclaringSyntaxReferences.IsEmpty: true, ContainingNamespace: { } space } && PlainSpaces.Contains(space.ToDisplayString())),
        InvocationExpressionSyntax call => !(model.GetSymbolInfo(call).Symbol is { } called ? OnlyGives(called) : call.Expression is IdentifierNameSyntax { Identifier.ValueText: "nameof" }),
        ElementAccessExpressionSyntax or SimpleNameSyntax => model.GetSymbolInfo(node).Symbol is { } named && (IsWorkedOut(named) || (IsHandedOn(node, model) && !OnlyGives(named))),
        _ => false,
    };

    /// <summary>Whether a node counts something up or down.</summary>
    public static bool IsStep(SyntaxNode node) => node.Kind() is SyntaxKind.PreIncrementExpression or SyntaxKind.PreDecrementExpression or SyntaxKind.PostIncrementExpression or SyntaxKind.PostDecrementExpression;

    /// <summary>Whether a property is only what it was set to.</summary>
    public static bool IsStored(SyntaxNode property) =>
        property is not (PropertyDeclarationSyntax or IndexerDeclarationSyntax)
        || property is PropertyDeclarationSyntax { ExpressionBody: null } declared && declared.AccessorList?.Accessors.All(accessor => accessor is { Body: null, ExpressionBody: null }) != false;

    private static bool IsWorkedOut(ISymbol named) => named is IPropertySymbol property && !property.DeclaringSyntaxReferences.All(declared => IsStored(declared.GetSyntax()));

    // Who is handed a method or a delegate may run it.
    private static bool IsHandedOn(SyntaxNode node, SemanticModel model) => model.GetTypeInfo(node).ConvertedType?.TypeKind == TypeKind.Delegate;

    // Of the framework's calls only those count that give a value and do nothing else, and of the team's own none.
    private static bool OnlyGives(ISymbol called) => called is IMethodSymbol { DeclaringSyntaxReferences.IsEmpty: true, ContainingType: { } type }
        && (type.SpecialType == SpecialType.System_String || PlainTypes.Contains(type.ToDisplayString()) || type.ContainingNamespace?.ToDisplayString() == "System.Numerics");

    // The team's code that no name stands for: a conversion, and what a list in braces or brackets is filled by.
    private static bool RunsUnseen(SyntaxNode node, SemanticModel model) => node is ExpressionSyntax expression
        && (IsOfTheTeam(model.GetConversion(expression).MethodSymbol)
            || (node is CastExpressionSyntax && IsOfTheTeam(model.GetSymbolInfo(node).Symbol))
            || (node is CollectionExpressionSyntax && model.GetTypeInfo(node).ConvertedType is { DeclaringSyntaxReferences.IsEmpty: false })
            || (node.Parent.IsKind(SyntaxKind.CollectionInitializerExpression) && IsOfTheTeam(model.GetCollectionInitializerSymbolInfo(expression).Symbol)));

    private static bool IsOfTheTeam(ISymbol? method) => method is IMethodSymbol { DeclaringSyntaxReferences.IsEmpty: false };
}
