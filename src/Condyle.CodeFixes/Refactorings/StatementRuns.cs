using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp.Syntax;
using Microsoft.CodeAnalysis.Text;

namespace Condyle.CodeFixes.Refactorings;

/// <summary>Stretches of statements of a block that may build one side of a rig.</summary>
internal static class StatementRuns
{
    /// <summary>Whether it is worth reading: something near the caret says a side.</summary>
    public static bool MayBeSided(SyntaxNode root, TextSpan span) =>
        root.FindNode(span).FirstAncestorOrSelf<MemberDeclarationSyntax>()?.ToString() is { } code
        && (code.IndexOf("left", StringComparison.OrdinalIgnoreCase) >= 0 || code.IndexOf("right", StringComparison.OrdinalIgnoreCase) >= 0 || code.IndexOf('"') >= 0);

    /// <summary>What is selected; at a caret the statement alone, then with all around it that says its side or goes by what does, from the inner block out.</summary>
    public static IEnumerable<IReadOnlyList<StatementSyntax>> At(SyntaxNode root, TextSpan span, Func<StatementSyntax, Side?> sideOf, SemanticModel code)
    {
        foreach (var block in root.FindNode(span).AncestorsAndSelf().OfType<BlockSyntax>())
        {
            var chosen = block.Statements.Where(statement => statement.Span.IntersectsWith(span)).ToList();
            if (chosen.Count == 0)
                continue;
            if (chosen.Exists(statement => sideOf(statement) is not null))
                yield return chosen;
            if (span.IsEmpty && Around(block.Statements.IndexOf(chosen[0]), block, sideOf, code) is { Count: > 1 } run)
                yield return run;
        }
    }

    private static List<StatementSyntax> Around(int index, BlockSyntax block, Func<StatementSyntax, Side?> sideOf, SemanticModel code)
    {
        var own = new HashSet<ISymbol>(SymbolEqualityComparer.Default);
        var belongs = new List<bool>();
        foreach (var statement in block.Statements)
        {
            var isOwn = sideOf(statement) is not null || statement.DescendantNodes().OfType<IdentifierNameSyntax>().Any(name => code.GetSymbolInfo(name).Symbol is ILocalSymbol local && own.Contains(local));
            belongs.Add(isOwn);
            if (isOwn && statement is LocalDeclarationStatementSyntax or ExpressionStatementSyntax)
                own.UnionWith(statement.DescendantNodes().Where(node => node is VariableDeclaratorSyntax or SingleVariableDesignationSyntax).Select(node => code.GetDeclaredSymbol(node)).OfType<ILocalSymbol>());
        }

        var (first, last) = (index, index);
        while (first > 0 && belongs[first - 1])
            first--;
        while (last < belongs.Count - 1 && belongs[last + 1])
            last++;
        return belongs[index] ? [.. block.Statements.Skip(first).Take(last - first + 1)] : [];
    }
}
