using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace Condyle.Analyzers.Reporting;

/// <summary>
/// A table written in code that a loop goes through, row by row: <c>foreach (var (copy, weight) in new[] { (ik, fk), (fk, fk) })</c>. Nothing but the loop asks it, and
/// of the column that is meant only one argument in the loop's body.
/// </summary>
/// <param name="Rows">The code that lists the rows.</param>
/// <param name="Cells">The code of the column, in the order of the turns.</param>
/// <param name="IsInferred">Whether the types of its cells go by its cells, wherever it is used.</param>
internal sealed record LoopTable(ExpressionSyntax Rows, IReadOnlyList<ExpressionSyntax> Cells, bool IsInferred)
{
    /// <summary>Types that keep the items of a list in brackets in their order.</summary>
    private static readonly HashSet<string> Lists = ["List", "IReadOnlyList", "IEnumerable", "Span", "ReadOnlySpan"];

    /// <summary>The table that an argument is given from; none where anything else has a part in it.</summary>
    public static LoopTable? Of(ExpressionSyntax argument, SemanticModel model)
    {
        if (NameIn(argument) is not { } name || model.GetSymbolInfo(name).Symbol is not ILocalSymbol local
            || LoopOf(local) is not var (loop, part) || !IsSaidInEachTurn(argument, loop.Statement) || ColumnOf(argument, name, part, loop, model) is not var (column, isInferred)
            || RowsOf(loop.Expression, model) is not var (rows, isInferredToo))
            return null;
        List<ExpressionSyntax?> cells = [.. ItemsOf(rows, model).Select(row => row is null ? null : CellOf(row, column))];
        return cells.Count > 0 && !cells.Contains(null) ? new(rows, [.. cells.OfType<ExpressionSyntax>()], isInferred && isInferredToo) : null;
    }

    private static IdentifierNameSyntax? NameIn(ExpressionSyntax argument) =>
        argument as IdentifierNameSyntax ?? (argument as MemberAccessExpressionSyntax)?.Expression as IdentifierNameSyntax;

    /// <summary>The loop that declares a local, and the part of a row that this is; none where it is the row.</summary>
    private static (CommonForEachStatementSyntax Loop, int? Part)? LoopOf(ILocalSymbol local) => local.DeclaringSyntaxReferences is not [var declared] ? null : declared.GetSyntax() switch
    {
        ForEachStatementSyntax loop => (loop, null),
        SingleVariableDesignationSyntax { Parent: ParenthesizedVariableDesignationSyntax { Parent: DeclarationExpressionSyntax { Parent: ForEachVariableStatementSyntax loop } } parts } part => (loop, parts.Variables.IndexOf(part)),
        _ => null,
    };

    // Where no turn passes it over: neither leaves the body early, nor says it on a condition.
    private static bool IsSaidInEachTurn(ExpressionSyntax argument, StatementSyntax body)
    {
        var code = argument.Ancestors().TakeWhile(ancestor => ancestor is not StatementSyntax).ToList();
        return code.TrueForAll(part => part is ArgumentSyntax or ArgumentListSyntax or InvocationExpressionSyntax or MemberAccessExpressionSyntax or AssignmentExpressionSyntax { RawKind: (int)SyntaxKind.SimpleAssignmentExpression })
            && argument.FirstAncestorOrSelf<StatementSyntax>() is ExpressionStatementSyntax said
            && (said == body || (body is BlockSyntax block && said.Parent == block && block.Statements.All(each => each is ExpressionStatementSyntax or LocalDeclarationStatementSyntax)));
    }

    /// <summary>Which column of the table an argument is, or none for a table of one column, and whether the loop takes it whatever its type is; nothing where the loop asks it elsewhere, too.</summary>
    private static (int? Column, bool IsInferred)? ColumnOf(ExpressionSyntax argument, IdentifierNameSyntax name, int? part, CommonForEachStatementSyntax loop, SemanticModel model)
    {
        List<IdentifierNameSyntax> mentions = [.. loop.Statement.DescendantNodes().OfType<IdentifierNameSyntax>().Where(other => other.Identifier.ValueText == name.Identifier.ValueText)];
        var isInferred = loop is not ForEachStatementSyntax { Type.IsVar: false };
        if (argument == name)
            return mentions.Count > 1 ? null : (part, isInferred);
        var columns = mentions.ConvertAll(other => ElementOf(other, model));
        var asked = ElementOf(name, model);
        return part is not null || asked < 0 || columns.Contains(-1) || columns.Count(column => column == asked) > 1 ? null : (asked, isInferred);
    }

    // Which element of a tuple is asked for.
    private static int ElementOf(IdentifierNameSyntax row, SemanticModel model) =>
        row.Parent is MemberAccessExpressionSyntax access && access.Expression == row && model.GetSymbolInfo(access).Symbol is IFieldSymbol { ContainingType: { IsTupleType: true } tuple } field
            ? tuple.TupleElements.ToList().FindIndex(element => element.Name == field.Name || element.CorrespondingTupleField?.Name == field.Name)
            : -1;

    /// <summary>What lists the rows: it stands in the loop, or in the declaration of a local that nothing else mentions.</summary>
    private static (ExpressionSyntax Rows, bool IsInferred)? RowsOf(ExpressionSyntax given, SemanticModel model)
    {
        if (given is not IdentifierNameSyntax name)
            return (given, true);
        return model.GetSymbolInfo(name).Symbol is ILocalSymbol { DeclaringSyntaxReferences: [var declared] } && declared.GetSyntax() is VariableDeclaratorSyntax { Initializer.Value: { } rows, Parent: VariableDeclarationSyntax declaration } local
            && local.FirstAncestorOrSelf<MemberDeclarationSyntax>() is { } member
            && member.DescendantNodes().OfType<IdentifierNameSyntax>().Count(other => other.Identifier.ValueText == name.Identifier.ValueText) == 1
            ? (rows, declaration.Type.IsVar)
            : null;
    }

    private static IEnumerable<ExpressionSyntax?> ItemsOf(ExpressionSyntax rows, SemanticModel model) => rows switch
    {
        ImplicitArrayCreationExpressionSyntax { Initializer: var items } => items.Expressions,
        ArrayCreationExpressionSyntax { Initializer: { } items } => items.Expressions,
        InitializerExpressionSyntax { RawKind: (int)SyntaxKind.ArrayInitializerExpression } items => items.Expressions,
        CollectionExpressionSyntax list when model.GetTypeInfo(list).ConvertedType is { } type && (type is IArrayTypeSymbol || (type.DeclaringSyntaxReferences.IsEmpty && Lists.Contains(type.Name))) =>
            list.Elements.Select(element => (element as ExpressionElementSyntax)?.Expression),
        _ => [],
    };

    private static ExpressionSyntax? CellOf(ExpressionSyntax row, int? column) => column is not { } place ? row
        : row is TupleExpressionSyntax tuple && place < tuple.Arguments.Count ? tuple.Arguments[place].Expression
        : null;
}
