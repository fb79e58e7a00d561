using Condyle.Analyzers.Reading;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;
using Microsoft.CodeAnalysis.Operations;

namespace Condyle.Analyzers.Reporting;

/// <summary>Code that gives a call an argument: what stands in the call, or where that comes from.</summary>
/// <param name="Code">The code.</param>
/// <param name="File">The file that it stands in.</param>
/// <param name="Said">The call in its function by which it is handed on: the one in question, or that of a helper.</param>
/// <param name="From">Where its function was called.</param>
/// <param name="Way">The times that the call in question is made with it.</param>
internal sealed record GivenCode(ExpressionSyntax Code, FileReadings File, ExpressionSyntax Said, CallSite? From, CallWay Way)
{
    /// <summary>The table that it is a cell of.</summary>
    public CodeTable? Table { get; private init; }

    /// <summary>What stands in the call by which it is handed on.</summary>
    private ExpressionSyntax Taken { get; init; } = Code;

    /// <summary>Whether the call in question is made exactly once for each time that it is handed on.</summary>
    private bool IsOnce { get; init; } = true;

    /// <summary>The code itself and, from there outwards, all that hands it on and serves nothing else: the rows of tables, and what helpers are given.</summary>
    /// <param name="time">The time of the call that is meant.</param>
    /// <param name="readingsOf">The readings of a file, by its path.</param>
    public IEnumerable<GivenCode> Origins(CallTime time, Func<string, FileReadings?> readingsOf)
    {
        var given = this;
        for (var steps = 0; given is not null && steps < Limits.HandedThrough; steps++)
        {
            yield return given;
            given = given.Before(time, readingsOf);
        }
    }

    /// <summary>Whether other code in its place leaves the call by which it is handed on a call of the same.</summary>
    public bool IsSaidWith(string other) => SymbolEqualityComparer.Default.Equals(
        Speculation.SymbolOf(Said.ReplaceNode(Taken, SyntaxFactory.ParseExpression(other)), Said.SpanStart, File.Model), File.Model.GetSymbolInfo(Said).Symbol);

    private GivenCode? Before(CallTime time, Func<string, FileReadings?> readingsOf)
    {
        var code = RepairEdits.InverseTaken(Code, File.Model) ?? Code;
        return code is not IdentifierNameSyntax name ? AtItsRow(code, time) : File.Model.GetSymbolInfo(name).Symbol switch
        {
            IParameterSymbol parameter => AtTheCaller(parameter, name, readingsOf),
            ILocalSymbol { DeclaringSyntaxReferences: [var declared] } when declared.GetSyntax() is VariableDeclaratorSyntax { Initializer.Value: { } value, Parent: VariableDeclarationSyntax declaration } local =>
                IsAlone(name, local) && (declaration.Type.IsVar || RepairEdits.IsWeight(File.Model.GetTypeInfo(declaration.Type).Type)) ? (this with { Code = value }).Before(time, readingsOf) : null,
            _ => AtItsRow(code, time),
        };
    }

    private static bool IsAlone(IdentifierNameSyntax name, SyntaxNode declared) =>
        Replaceable.FunctionAround(name) is { } function && function == Replaceable.FunctionAround(declared) && CodeTable.MentionsIn(function, name.Identifier.ValueText).Count() == 1;

    private GivenCode? AtTheCaller(IParameterSymbol parameter, IdentifierNameSyntax name, Func<string, FileReadings?> readingsOf)
    {
        if (From is null || parameter.RefKind != RefKind.None || !RepairEdits.IsWeight(parameter.Type) || Replaceable.FunctionAround(name) is not { } function || !SymbolEqualityComparer.Default.Equals(File.Model.GetDeclaredSymbol(function), parameter.ContainingSymbol)
            || CodeTable.MentionsIn(function, name.Identifier.ValueText).Count() != 1 || readingsOf(From.At.Path) is not { } caller
            || caller.Tree.GetRoot().FindNode(From.At.Span, getInnermostNodeForTie: true) is not ExpressionSyntax call || ArgumentOf(parameter, call, caller.Model) is not { } argument)
            return null;
        return new(argument, caller, call, From.From, Way.Through(From.At)) { IsOnce = IsOnce && BodyOf(function) is { } body && LoopTable.IsSaidOnceIn(body, Said) };
    }

    // Others may override what is called, and be given the same.
    private static ExpressionSyntax? ArgumentOf(IParameterSymbol parameter, ExpressionSyntax call, SemanticModel model) =>
        model.GetOperation(call) is IInvocationOperation { IsVirtual: false, TargetMethod: var called, Arguments: var arguments } && SymbolEqualityComparer.Default.Equals(called.OriginalDefinition, parameter.ContainingSymbol)
            && arguments.FirstOrDefault(argument => argument.ArgumentKind == ArgumentKind.Explicit && argument.Parameter?.Ordinal == parameter.Ordinal) is { } argument
            ? argument.Value.Syntax as ExpressionSyntax
            : null;

    private static SyntaxNode? BodyOf(SyntaxNode function) => function switch
    {
        BaseMethodDeclarationSyntax method => (SyntaxNode?)method.Body ?? method.ExpressionBody?.Expression,
        LocalFunctionStatementSyntax local => (SyntaxNode?)local.Body ?? local.ExpressionBody?.Expression,
        _ => null,
    };

    private GivenCode? AtItsRow(ExpressionSyntax code, CallTime time)
    {
        // Which turn of two loops it is can't be told by counting.
        if (!IsOnce || Way.Turns > 0 || File.Uses.TableOf(code.Span, Said.Span, () => RowsOf(code)) is not { } rows)
            return null;
        return File.Uses.Times.WayOf(time, Way.InTurn(0, rows.Cells.Count).Kind) is { } way ? new(rows.Cells[way.Turn], File, Said, From, way) { Table = rows.Table, Taken = Taken } : null;
    }

    // What an array of its rows' own type hands on may become a weight or a switch by any of them, so that this is asked once for all.
    private LoopTable? RowsOf(ExpressionSyntax code) => (KeyedRow(code) ?? LoopTable.Of(code, Said, File.Model, isAlone: true)) is { } rows
        && (rows.Table.List is not ImplicitArrayCreationExpressionSyntax || (IsSaidWith($"default(global::{typeof(Switch).FullName})") && IsSaidWith($"default(global::{typeof(Weight).FullName})"))) ? rows : null;

    /// <summary>The values of a dictionary by the keys of a loop, in the order of its turns.</summary>
    private LoopTable? KeyedRow(ExpressionSyntax code)
    {
        if (code is not ElementAccessExpressionSyntax { Expression: IdentifierNameSyntax dictionary, ArgumentList.Arguments: [{ Expression: var key }] }
            || CodeTable.Of(dictionary, _ => false, File.Model) is not { IsKeyed: true } table || LoopTable.Of(key, Said, File.Model, isAlone: false) is not { } keys)
            return null;
        var rows = table.Rows.ToDictionary(row => CodeTable.MeantBy(row.Key!, File.Model));
        var cells = keys.Cells.Select(asked => rows.TryGetValue(CodeTable.MeantBy(asked, File.Model), out var row) && MeanTheSame(row.Key!, asked) ? row.Value : null).OfType<ExpressionSyntax>().Distinct().ToList();
        return cells.Count == keys.Cells.Count ? new(table, cells) : null;
    }

    // Two of the same constant, or of a name that has one value.
    private bool MeanTheSame(ExpressionSyntax one, ExpressionSyntax other)
    {
        if (File.Model.GetConstantValue(one) is { HasValue: true, Value: var value })
            return File.Model.GetConstantValue(other) is { HasValue: true, Value: var same } && Equals(value, same);
        return one is IdentifierNameSyntax && other is IdentifierNameSyntax && File.Model.GetSymbolInfo(one).Symbol is ILocalSymbol or IParameterSymbol
            && SymbolEqualityComparer.Default.Equals(File.Model.GetSymbolInfo(one).Symbol, File.Model.GetSymbolInfo(other).Symbol) && Replaceable.MeanTheSame(other, one, File.Model);
    }
}
