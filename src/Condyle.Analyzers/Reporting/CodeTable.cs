using System.Globalization;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace Condyle.Analyzers.Reporting;

/// <summary>A table written in code: what a list in braces or brackets holds, and what the statements behind its declaration add.</summary>
/// <param name="List">The code that lists the rows, or the first of them.</param>
/// <param name="Rows">All rows, in their order; those of a dictionary have a key.</param>
/// <param name="IsInferred">Whether the types of its cells go by its cells, wherever it is used.</param>
internal sealed record CodeTable(ExpressionSyntax List, IReadOnlyList<(ExpressionSyntax? Key, ExpressionSyntax Value)> Rows, bool IsInferred)
{
    private const string Add = "Add";

    /// <summary>Types that keep the items of a list in brackets in their order.</summary>
    private static readonly HashSet<string> Lists = ["List", "IReadOnlyList", "IEnumerable", "Span", "ReadOnlySpan"];

    /// <summary>Types of which an object is made with its items in braces.</summary>
    private static readonly HashSet<string> Collections = ["List", "Dictionary"];

    /// <summary>Whether its rows have keys.</summary>
    public bool IsKeyed => Rows[0].Key is not null;

    /// <summary>The table that code asks: it stands there, or in the declaration of a local; none where others may fill it, or ask it elsewhere.</summary>
    /// <param name="asked">The code.</param>
    /// <param name="isOurs">Whether a mention of the local is a part of what the code asks.</param>
    /// <param name="model">The model of the file.</param>
    public static CodeTable? Of(ExpressionSyntax asked, Func<IdentifierNameSyntax, bool> isOurs, SemanticModel model) => asked is IdentifierNameSyntax name
        ? LocalTable(name, isOurs, model)
        : Made(asked, [.. ItemsOf(asked, model)], isInferred: true, model);

    private static CodeTable? LocalTable(IdentifierNameSyntax name, Func<IdentifierNameSyntax, bool> isOurs, SemanticModel model)
    {
        if (model.GetSymbolInfo(name).Symbol is not ILocalSymbol { DeclaringSyntaxReferences: [var declared] } || declared.GetSyntax() is not VariableDeclaratorSyntax { Initializer.Value: { } list, Parent: VariableDeclarationSyntax { Parent: { } statement } declaration } local
            || Replaceable.FunctionAround(local) != Replaceable.FunctionAround(name) || local.FirstAncestorOrSelf<MemberDeclarationSyntax>() is not { } member)
            return null;
        List<(ExpressionSyntax?, ExpressionSyntax)?> rows = [.. ItemsOf(list, model)];
        foreach (var mention in MentionsIn(member, name.Identifier.ValueText))
        {
            if (mention == name || isOurs(mention) || IsSize(mention))
                continue;
            if (AddedBy(mention) is not var (key, value, adding) || adding.Parent != statement.Parent || adding.SpanStart < statement.Span.End || adding.Span.End > name.SpanStart)
                return null;
            rows.Add((key, value));
        }

        return Made(list, rows, declaration.Type.IsVar, model);
    }

    // With a key of its own for each row, or for none: a row whose key is set again is lost.
    private static CodeTable? Made(ExpressionSyntax list, List<(ExpressionSyntax? Key, ExpressionSyntax Value)?> rows, bool isInferred, SemanticModel model)
    {
        if (rows.Count == 0 || rows.Contains(null))
            return null;
        var keys = rows.Select(row => row!.Value.Key).OfType<ExpressionSyntax>().ToList();
        return keys.Count == 0 || (keys.Count == rows.Count && keys.Select(key => MeantBy(key, model)).Distinct().Count() == keys.Count) ? new(list, [.. rows.Select(row => row!.Value)], isInferred) : null;
    }

    /// <summary>What tells a key from others: its constant, or its code, where a local that is another name for something means that.</summary>
    public static (string Text, bool IsConstant) MeantBy(ExpressionSyntax key, SemanticModel model)
    {
        if (model.GetConstantValue(key) is { HasValue: true, Value: var value })
            return (Convert.ToString(value, CultureInfo.InvariantCulture), true);
        return key is IdentifierNameSyntax && model.GetSymbolInfo(key).Symbol is ILocalSymbol { DeclaringSyntaxReferences: [var declared] }
            && declared.GetSyntax() is VariableDeclaratorSyntax { Initializer.Value: IdentifierNameSyntax or MemberAccessExpressionSyntax } local && local.Span.End <= key.SpanStart
            ? MeantBy(local.Initializer.Value, model)
            : (key.ToString(), false);
    }

    /// <summary>Where code names a local or a parameter, as far as a text tells; members and names of parameters are called otherwise.</summary>
    public static IEnumerable<IdentifierNameSyntax> MentionsIn(SyntaxNode code, string name) => code.DescendantNodes().OfType<IdentifierNameSyntax>()
        .Where(other => other.Identifier.ValueText == name && other.Parent is not NameColonSyntax && !(other.Parent is MemberAccessExpressionSyntax access && access.Name == other));

    /// <summary>Whether a list is asked how many items it has.</summary>
    public static bool IsSize(ExpressionSyntax list) =>
        list.Parent is MemberAccessExpressionSyntax { Name.Identifier.ValueText: "Length" or "Count", Parent: not InvocationExpressionSyntax } access && access.Expression == list;

    // A statement that adds an item, or sets one by its key.
    private static (ExpressionSyntax? Key, ExpressionSyntax Value, StatementSyntax Adding)? AddedBy(IdentifierNameSyntax list) => list.Parent switch
    {
        MemberAccessExpressionSyntax { Name.Identifier.ValueText: Add, Parent: InvocationExpressionSyntax { ArgumentList.Arguments: var given, Parent: ExpressionStatementSyntax adding } } => given switch
        {
            [{ NameColon: null, Expression: var item }] => (null, item, adding),
            [{ NameColon: null, Expression: var key }, { NameColon: null, Expression: var value }] => (key, value, adding),
            _ => null,
        },
        ElementAccessExpressionSyntax { ArgumentList.Arguments: [{ Expression: var key }], Parent: AssignmentExpressionSyntax { RawKind: (int)SyntaxKind.SimpleAssignmentExpression, Right: var value, Parent: ExpressionStatementSyntax adding } set } element when set.Left == element =>
            (key, value, adding),
        _ => null,
    };

    // Nothing for an item that isn't written out.
    private static IEnumerable<(ExpressionSyntax? Key, ExpressionSyntax Value)?> ItemsOf(ExpressionSyntax list, SemanticModel model) => list switch
    {
        ImplicitArrayCreationExpressionSyntax { Initializer: var items } => Plain(items),
        ArrayCreationExpressionSyntax { Initializer: { } items } => Plain(items),
        InitializerExpressionSyntax { RawKind: (int)SyntaxKind.ArrayInitializerExpression } items => Plain(items),
        CollectionExpressionSyntax written when model.GetTypeInfo(written).ConvertedType is { } type && (type is IArrayTypeSymbol || IsOneOf(Lists, type)) =>
            written.Elements.Select(element => element is ExpressionElementSyntax { Expression: var item } ? (null, item) : ((ExpressionSyntax?, ExpressionSyntax)?)null),
        BaseObjectCreationExpressionSyntax { ArgumentList: null or { Arguments.Count: 0 }, Initializer: var items } made when model.GetTypeInfo(made).Type is { } type && IsOneOf(Collections, type) =>
            items?.Expressions.Select(ItemOf) ?? [],
        _ => [null],
    };

    private static IEnumerable<(ExpressionSyntax? Key, ExpressionSyntax Value)?> Plain(InitializerExpressionSyntax items) => items.Expressions.Select(item => ((ExpressionSyntax?, ExpressionSyntax)?)(null, item));

    private static (ExpressionSyntax? Key, ExpressionSyntax Value)? ItemOf(ExpressionSyntax item) => item switch
    {
        InitializerExpressionSyntax { Expressions: [var key, var value] } => (key, value),
        InitializerExpressionSyntax => null,
        AssignmentExpressionSyntax { Left: ImplicitElementAccessSyntax { ArgumentList.Arguments: [{ Expression: var key }] }, Right: var value } => (key, value),
        _ => (null, item),
    };

    private static bool IsOneOf(HashSet<string> names, ITypeSymbol type) => type.DeclaringSyntaxReferences.IsEmpty && names.Contains(type.Name);
}
