using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace Condyle.Analyzers.Reporting;

/// <summary>
/// A column of a table that a loop goes through, row by row: <c>foreach (var (copy, weight) in new[] { (ik, fk), (fk, fk) })</c>, or by a counter that nothing else sets.
/// </summary>
/// <param name="Table">The table.</param>
/// <param name="Cells">The code of the column, in the order of the turns.</param>
internal sealed record LoopTable(CodeTable Table, IReadOnlyList<ExpressionSyntax> Cells)
{
    /// <summary>In place of a column: the row as a whole.</summary>
    private const int Whole = -1;

    /// <summary>The column that a value comes from; none where it isn't sure that each turn takes the next row.</summary>
    /// <param name="asked">The code that gives the value: a local of the loop, an element by its counter, or a part of either.</param>
    /// <param name="said">The call that takes it.</param>
    /// <param name="model">The model of the file.</param>
    /// <param name="isAlone">Whether it has to be the only code that asks for the column.</param>
    public static LoopTable? Of(ExpressionSyntax asked, ExpressionSyntax said, SemanticModel model, bool isAlone)
    {
        var row = asked is MemberAccessExpressionSyntax { Expression: var whole } ? whole : asked;
        var table = ColumnOf(row, model) is not { } column ? null
            : row is IdentifierNameSyntax name ? Each(name, column, said, model, isAlone)
            : row is ElementAccessExpressionSyntax { Expression: IdentifierNameSyntax list, ArgumentList.Arguments: [{ Expression: IdentifierNameSyntax counter }] } ? Counted(list, counter, column, said, model, isAlone)
            : null;
        return table is null || !isAlone || table.BearsInverses(asked, model) ? table : null;
    }

    // Where the type of an array comes of its rows, a weight must be able to stand beside a switch, whichever cells become one.
    private bool BearsInverses(ExpressionSyntax asked, SemanticModel model)
    {
        if (Table.List is not ImplicitArrayCreationExpressionSyntax)
            return true;
        if (!Table.IsInferred || !Cells.All(cell => RepairEdits.HasInverse(model.GetTypeInfo(cell).Type)))
            return false;
        if (Cells[0].Parent is not ArgumentSyntax { Parent: TupleExpressionSyntax first } cell)
            return true;
        var rows = Table.Rows.Select(row => ((TupleExpressionSyntax)row.Value).Arguments).ToList();
        var column = first.Arguments.IndexOf(cell);
        return rows.TrueForAll(row => row.Count == first.Arguments.Count)
            && (asked is not MemberAccessExpressionSyntax part || part.Name.Identifier.ValueText == $"Item{column + 1}" || rows.TrueForAll(row => row[column].NameColon is not null))
            && Enumerable.Range(0, first.Arguments.Count).All(other => other == column || IsFixed([.. rows.Select(row => row[other].Expression)], mayTurn: other > column, model));
    }

    // One type, which nothing turns into another: of two columns of weights, only the first is repaired.
    private static bool IsFixed(IReadOnlyList<ExpressionSyntax> cells, bool mayTurn, SemanticModel model) =>
        cells.Select(cell => model.GetTypeInfo(cell).Type).Distinct<ITypeSymbol?>(SymbolEqualityComparer.Default).ToList() is [{ } type] && (mayTurn || !RepairEdits.HasInverse(type));

    private static LoopTable? Each(IdentifierNameSyntax name, int column, ExpressionSyntax said, SemanticModel model, bool isAlone)
    {
        if (DeclarationOf(name, model) is not { } declared || LoopOf(declared) is not var (loop, part) || !IsSaidInEachTurn(said, loop, loop.Statement)
            || (part is not null && column != Whole) || (isAlone && !IsAlone(CodeTable.MentionsIn(loop.Statement, name.Identifier.ValueText), column, model))
            || CodeTable.Of(loop.Expression, mention => !isAlone && IsRead(mention), model) is not { } table)
            return null;
        return ColumnIn(loop is ForEachStatementSyntax { Type.IsVar: false } ? table with { IsInferred = false } : table, part ?? column);
    }

    private static LoopTable? Counted(IdentifierNameSyntax list, IdentifierNameSyntax counter, int column, ExpressionSyntax said, SemanticModel model, bool isAlone)
    {
        if (DeclarationOf(counter, model) is not { Parent.Parent: ForStatementSyntax loop } || !IsSaidInEachTurn(said, loop, loop.Statement) || !CountsUp(loop, counter.Identifier.ValueText)
            || CodeTable.Of(list, IsElement, model) is not { IsKeyed: false } table || TurnsOf(loop, list, table, model) != table.Rows.Count
            || (isAlone && !IsAlone(CodeTable.MentionsIn(list.FirstAncestorOrSelf<MemberDeclarationSyntax>()!, list.Identifier.ValueText).Where(IsElement).Select(mention => (ExpressionSyntax)mention.Parent!), column, model)))
            return null;
        return ColumnIn(table, column);
    }

    private static SyntaxNode? DeclarationOf(IdentifierNameSyntax name, SemanticModel model) =>
        model.GetSymbolInfo(name).Symbol is ILocalSymbol { DeclaringSyntaxReferences: [var declared] } ? declared.GetSyntax() : null;

    /// <summary>The loop that declares a local, and the part of a row that this is; none where it is the row.</summary>
    private static (CommonForEachStatementSyntax Loop, int? Part)? LoopOf(SyntaxNode declared) => declared switch
    {
        ForEachStatementSyntax loop => (loop, null),
        SingleVariableDesignationSyntax { Parent: ParenthesizedVariableDesignationSyntax { Parent: DeclarationExpressionSyntax { Parent: ForEachVariableStatementSyntax loop } } parts } part => (loop, parts.Variables.IndexOf(part)),
        _ => null,
    };

    /// <summary>Whether a call is made exactly once each time that some code runs: nothing leaves it early, or makes the call on a condition.</summary>
    public static bool IsSaidOnceIn(SyntaxNode code, ExpressionSyntax said)
    {
        SyntaxNode? node = said;
        while (node != code && node is not StatementSyntax)
        {
            if (node is not (ArgumentSyntax or ArgumentListSyntax or InvocationExpressionSyntax or MemberAccessExpressionSyntax or AssignmentExpressionSyntax { RawKind: (int)SyntaxKind.SimpleAssignmentExpression } or EqualsValueClauseSyntax or VariableDeclaratorSyntax or VariableDeclarationSyntax))
                return false;
            node = node.Parent;
        }

        return node == code || (code is BlockSyntax block && node.Parent == block && block.Statements.All(each => each is ExpressionStatementSyntax or LocalDeclarationStatementSyntax || (each is ReturnStatementSyntax && each == block.Statements.Last())));
    }

    // What an exception leaves in the middle of the rows would begin anew.
    private static bool IsSaidInEachTurn(ExpressionSyntax said, SyntaxNode loop, StatementSyntax body) => IsSaidOnceIn(body, said) && !loop.Ancestors().Any(around => around is TryStatementSyntax);

    private static bool CountsUp(ForStatementSyntax loop, string counter) =>
        loop is { Declaration.Variables: [{ Initializer.Value: LiteralExpressionSyntax { Token.Value: 0 } }], Condition: BinaryExpressionSyntax { RawKind: (int)SyntaxKind.LessThanExpression, Left: IdentifierNameSyntax asked }, Incrementors: [PrefixUnaryExpressionSyntax { RawKind: (int)SyntaxKind.PreIncrementExpression } or PostfixUnaryExpressionSyntax { RawKind: (int)SyntaxKind.PostIncrementExpression }] }
        && asked.Identifier.ValueText == counter && !Replaceable.IsSetIn(loop.Statement, counter);

    // By a number, or by what lists as many rows.
    private static int? TurnsOf(ForStatementSyntax loop, IdentifierNameSyntax list, CodeTable table, SemanticModel model)
    {
        var end = ((BinaryExpressionSyntax)loop.Condition!).Right;
        if (model.GetConstantValue(end) is { HasValue: true, Value: int known })
            return known;
        return end is MemberAccessExpressionSyntax { Expression: IdentifierNameSyntax other } && CodeTable.IsSize(other)
            ? other.Identifier.ValueText == list.Identifier.ValueText ? table.Rows.Count : CodeTable.Of(other, IsRead, model)?.Rows.Count
            : null;
    }

    private static bool IsElement(IdentifierNameSyntax list) => list.Parent is ElementAccessExpressionSyntax element && element.Expression == list && !Replaceable.IsSetInPart(element);

    private static bool IsRead(IdentifierNameSyntax list) => IsElement(list) || (list.Parent is CommonForEachStatementSyntax loop && loop.Expression == list);

    // Of all that is asked of the rows, nothing else may ask for the column.
    private static bool IsAlone(IEnumerable<ExpressionSyntax> rows, int column, SemanticModel model)
    {
        var columns = rows.Select(row => ColumnOf(row, model) ?? Whole).ToList();
        return columns.Count(asked => asked == column) == 1 && (columns.Count == 1 || !columns.Contains(Whole));
    }

    /// <summary>What is asked of a row: an element of a tuple, the key or the value of a pair, or all of it; none for what it only says by itself.</summary>
    private static int? ColumnOf(ExpressionSyntax row, SemanticModel model)
    {
        if (row.Parent is not MemberAccessExpressionSyntax access || access.Expression != row || RepairEdits.InverseTaken(access, model) is not null)
            return Whole;
        return model.GetSymbolInfo(access).Symbol switch
        {
            IFieldSymbol { ContainingType: { IsTupleType: true } tuple } field => tuple.TupleElements.ToList().FindIndex(element => element.Name == field.Name || element.CorrespondingTupleField?.Name == field.Name),
            IPropertySymbol { Name: nameof(KeyValuePair<,>.Key), ContainingType.Name: nameof(KeyValuePair<,>) } => 0,
            IPropertySymbol { Name: nameof(KeyValuePair<,>.Value), ContainingType.Name: nameof(KeyValuePair<,>) } => 1,
            _ => null,
        };
    }

    private static LoopTable? ColumnIn(CodeTable table, int column)
    {
        List<ExpressionSyntax?> cells = [.. table.Rows.Select(row => CellOf(row.Key, row.Value, column))];
        return cells.Contains(null) ? null : new(table, [.. cells.OfType<ExpressionSyntax>()]);
    }

    private static ExpressionSyntax? CellOf(ExpressionSyntax? key, ExpressionSyntax value, int column) => (key, column) switch
    {
        (null, Whole) => value,
        (null, _) => value is TupleExpressionSyntax tuple && column < tuple.Arguments.Count ? tuple.Arguments[column].Expression : null,
        (_, 0) => key,
        (_, 1) => value,
        _ => null,
    };
}
