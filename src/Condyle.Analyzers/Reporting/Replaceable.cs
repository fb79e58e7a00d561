using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;
using Microsoft.CodeAnalysis.Text;

namespace Condyle.Analyzers.Reporting;

/// <summary>Whether code can give way to other code without anything else being lost or meant.</summary>
internal static class Replaceable
{
    /// <summary>Whether a stretch of code holds what isn't code: a comment or a directive.</summary>
    public static bool HoldsMore(TextSpan span, SyntaxTree tree) => !span.IsEmpty && tree.GetRoot().FindNode(span).DescendantTrivia(span)
        .Any(trivia => span.Contains(trivia.Span) && !trivia.IsKind(SyntaxKind.WhitespaceTrivia) && !trivia.IsKind(SyntaxKind.EndOfLineTrivia));

    /// <summary>Whether a call around a stretch of code is given the text of its arguments.</summary>
    public static bool IsQuoted(TextSpan span, SemanticModel model) => model.SyntaxTree.GetRoot().FindToken(span.Start).Parent?.AncestorsAndSelf()
        .Any(around => around is InvocationExpressionSyntax or BaseObjectCreationExpressionSyntax && model.GetSymbolInfo(around).Symbol is IMethodSymbol called
            && called.Parameters.Any(parameter => parameter.GetAttributes().Any(attribute => attribute.AttributeClass?.Name == "CallerArgumentExpressionAttribute"))) == true;

    /// <summary>Whether names say the same at another place of the function: none is hidden there, and none is set anew meanwhile.</summary>
    public static bool MeanTheSame(ExpressionSyntax code, SyntaxNode there, SemanticModel model) =>
        FunctionAround(code) is { } function && function == FunctionAround(there)
        && (StatementAround(code) == StatementAround(there)
            || code.DescendantNodesAndSelf().OfType<IdentifierNameSyntax>().All(name => IsFixed(name, there, function, model)));

    /// <summary>Whether a local has the value that it was declared with at another place of its function.</summary>
    public static bool MeansTheSame(VariableDeclaratorSyntax local, ExpressionSyntax there, SemanticModel model) =>
        FunctionAround(local) is { } function && function == FunctionAround(there) && local.Span.End <= there.SpanStart
        && model.GetDeclaredSymbol(local) is { } meant && model.LookupSymbols(there.SpanStart, name: local.Identifier.ValueText).Contains(meant, SymbolEqualityComparer.Default)
        && !IsSetIn(function, local.Identifier.ValueText);

    /// <summary>Whether code already gives something at an earlier place: it asks locals and parameters that have their value there, and those only for what nobody sets.</summary>
    public static bool IsGivenAt(ExpressionSyntax code, ExpressionSyntax there, SemanticModel model) =>
        model.AnalyzeDataFlow(there) is { Succeeded: true } flow && code.DescendantNodesAndSelf().OfType<ExpressionSyntax>().All(part => part is LiteralExpressionSyntax or MemberAccessExpressionSyntax or ThisExpressionSyntax || model.GetSymbolInfo(part).Symbol switch
        {
            ILocalSymbol local => flow.DefinitelyAssignedOnEntry.Contains(local, SymbolEqualityComparer.Default),
            IParameterSymbol parameter => parameter.RefKind == RefKind.None && part is IdentifierNameSyntax,
            IPropertySymbol { IsIndexer: true } indexer => indexer is { IsReadOnly: true, DeclaringSyntaxReferences: [], ContainingNamespace.Name: nameof(Condyle) },
            IPropertySymbol property => property.SetMethod is null or { IsInitOnly: true } && part.Parent is MemberAccessExpressionSyntax member && member.Name == part && property.DeclaringSyntaxReferences.All(declared => CodeEffects.IsStored(declared.GetSyntax())),
            IFieldSymbol field => field.IsReadOnly || field.IsConst || (StatementAround(code) is { } statement && statement == StatementAround(there) && !IsSetIn(statement, field.Name)),
            INamespaceOrTypeSymbol => true,
            _ => false,
        });

    /// <summary>Whether nobody but its declaration fills the table that a local holds: it is only asked for its elements.</summary>
    public static bool IsOnlyAsked(VariableDeclaratorSyntax table) => FunctionAround(table) is { } function && function.DescendantNodes().OfType<IdentifierNameSyntax>()
        .All(name => name.Identifier.ValueText != table.Identifier.ValueText || (name.Parent is ElementAccessExpressionSyntax element && element.Expression == name && !IsSet(element)));

    private static bool IsFixed(IdentifierNameSyntax name, SyntaxNode there, SyntaxNode function, SemanticModel model)
    {
        if (name.Parent is MemberAccessExpressionSyntax access && access.Name == name)
            return true;
        var meant = model.GetSymbolInfo(name).Symbol;
        return meant is not null
            && model.LookupSymbols(there.SpanStart, name: name.Identifier.ValueText).Contains(meant, SymbolEqualityComparer.Default)
            && (meant is not ILocalSymbol local || local.DeclaringSyntaxReferences.All(declared => IsBefore(declared.GetSyntax(), there)))
            && !IsSetIn(function, name.Identifier.ValueText);
    }

    // A loop declares its local before its body.
    private static bool IsBefore(SyntaxNode declared, SyntaxNode there) => declared is ForEachStatementSyntax loop ? loop.Statement.Span.Contains(there.Span) : declared.Span.End <= there.SpanStart;

    /// <summary>Whether a function sets what is called so anew.</summary>
    public static bool IsSetIn(SyntaxNode function, string name) => function.DescendantNodes().OfType<IdentifierNameSyntax>().Any(other => other.Identifier.ValueText == name && IsSet(other));

    /// <summary>Whether code sets what an expression stands for.</summary>
    public static bool IsSet(ExpressionSyntax name) => name.Parent switch
    {
        AssignmentExpressionSyntax assignment => assignment.Left == name,
        ArgumentSyntax { Parent: TupleExpressionSyntax tuple } => IsSet(tuple),
        ArgumentSyntax argument => argument.RefKindKeyword != default,
        RefExpressionSyntax => true,
        PrefixUnaryExpressionSyntax or PostfixUnaryExpressionSyntax => CodeEffects.IsStep(name.Parent),
        _ => false,
    };

    /// <summary>Whether code sets what an expression stands for, or a part of it.</summary>
    public static bool IsSetInPart(ExpressionSyntax whole) => IsSet(whole) || (whole.Parent is MemberAccessExpressionSyntax part && part.Expression == whole && IsSetInPart(part));

    private static SyntaxNode? StatementAround(SyntaxNode node) => node.Ancestors().FirstOrDefault(ancestor => ancestor is StatementSyntax or ArrowExpressionClauseSyntax or AnonymousFunctionExpressionSyntax);

    /// <summary>The innermost function that a node of code stands in.</summary>
    public static SyntaxNode? FunctionAround(SyntaxNode node) =>
        node.Ancestors().FirstOrDefault(ancestor => ancestor is BaseMethodDeclarationSyntax or LocalFunctionStatementSyntax or AnonymousFunctionExpressionSyntax or AccessorDeclarationSyntax);
}
