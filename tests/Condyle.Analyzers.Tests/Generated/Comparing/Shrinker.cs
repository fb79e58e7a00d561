using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace Condyle.Analyzers.Tests.Generated;

/// <summary>Makes a failing program small: leaves out statements, members and parts of expressions as long as it still compiles and fails in the same way.</summary>
internal static class Shrinker
{
    private const int Rounds = 12;

    public static string Shrink(string source, Verdict verdict)
    {
        var (small, size) = (source, 64);
        for (var round = 0; round < Rounds; round++)
        {
            var before = small.Length;
            foreach (var kind in new Func<SyntaxNode, IEnumerable<Cut>>[] { Members, Statements, Blocks, Expressions })
                small = Cuts(small, verdict, kind, size);
            if (small.Length == before)
                break;
        }

        return small;
    }

    // Cuts are tried in bulk first, so that most of a program goes at once, then in halves of it.
    private static string Cuts(string source, Verdict verdict, Func<SyntaxNode, IEnumerable<Cut>> kind, int size)
    {
        for (; size >= 1; size /= 4)
        {
            for (var skip = 0; ;)
            {
                var root = CSharpSyntaxTree.ParseText(source, new CSharpParseOptions(LanguageVersion.Preview)).GetRoot();
                var possible = kind(root).Where(cut => !EndsLoops(source[cut.Start..cut.End], kind == Expressions)).ToList();
                List<Cut> cuts = size > 1 ? [.. Apart(possible)] : possible;
                if (skip >= cuts.Count)
                    break;
                // Several ways are compiled together.
                List<List<Cut>> groups = [.. cuts.Skip(skip).Chunk(size).Take(16).Select(group => group.ToList())];
                List<string> ways = [.. groups.Select(group => Apply(source, group))];
                var outcomes = Batch.Check(ways);
                var at = outcomes.ToList().FindIndex(outcome => outcome.Verdict == verdict);
                if (at < 0)
                {
                    skip += groups.Sum(group => group.Count);
                    continue;
                }

                source = ways[at];
                skip += groups.Take(at).Sum(group => group.Count);
            }
        }

        return source;
    }

    // Without that a loop might go on for ever.
    private static bool EndsLoops(string code, bool isExpression) => code.Contains("fuel", StringComparison.Ordinal) || (isExpression && code.Contains("Goes", StringComparison.Ordinal));

    private static string Apply(string source, IEnumerable<Cut> cuts)
    {
        foreach (var cut in cuts.OrderByDescending(cut => cut.Start))
            source = source[..cut.Start] + cut.Instead + source[cut.End..];
        return source;
    }

    /// <summary>Cuts that don't lie inside each other, the outer ones first.</summary>
    private static IEnumerable<Cut> Apart(IEnumerable<Cut> cuts)
    {
        var end = -1;
        foreach (var cut in cuts.OrderBy(cut => cut.Start).ThenByDescending(cut => cut.End))
        {
            if (cut.Start < end)
                continue;
            end = cut.End;
            yield return cut;
        }
    }

    private static IEnumerable<Cut> Members(SyntaxNode root) => root.DescendantNodes().OfType<MemberDeclarationSyntax>()
        .Where(member => member is not (BaseNamespaceDeclarationSyntax or ClassDeclarationSyntax { Identifier.Text: "TestRig" or "Trace" }) && !member.ToString().Contains("fuel", StringComparison.Ordinal))
        .Select(member => new Cut(member, ""));

    private static IEnumerable<Cut> Statements(SyntaxNode root) => root.DescendantNodes().OfType<StatementSyntax>()
        .Where(statement => statement.Parent is BlockSyntax or SwitchSectionSyntax or GlobalStatementSyntax).Select(statement => new Cut(statement, ""));

    private static IEnumerable<Cut> Blocks(SyntaxNode root) => root.DescendantNodes().SelectMany(node => node switch
    {
        IfStatementSyntax { Else: { } other } => [new Cut(other, "")],
        IfStatementSyntax choice when !choice.Condition.ToString().Contains("Goes", StringComparison.Ordinal) => [new Cut(choice, choice.Statement.ToString())],
        TryStatementSyntax attempt => [new Cut(attempt, attempt.Block.ToString())],
        ForEachStatementSyntax loop => [new Cut(loop, loop.Statement.ToString())],
        UsingStatementSyntax usage => [new Cut(usage, usage.Statement.ToString())],
        LockStatementSyntax guard => [new Cut(guard, guard.Statement.ToString())],
        CatchClauseSyntax clause => [new Cut(clause, "")],
        SwitchSectionSyntax section => [new Cut(section, "")],
        BlockSyntax { Parent: BlockSyntax } block => [new Cut(block, string.Concat(block.Statements))],
        _ => Array.Empty<Cut>(),
    });

    private static IEnumerable<Cut> Expressions(SyntaxNode root) =>
        root.DescendantNodes().OfType<ExpressionSyntax>().Where(node => node is not (TypeSyntax or LiteralExpressionSyntax) && !IsName(node))
            .SelectMany(node => Inner(node).Where(inner => inner.Span != node.Span).Select(inner => new Cut(node, inner.ToString())).Append(new Cut(node, "default")))
            .Concat(root.DescendantNodes().OfType<ArgumentSyntax>().Where(argument => argument.Parent is ArgumentListSyntax { Arguments.Count: 1 }).Select(argument => new Cut(argument, "")));

    /// <summary>The nearest expressions in another one; what is called isn't one without its call.</summary>
    private static IEnumerable<ExpressionSyntax> Inner(SyntaxNode node) => node.ChildNodes().SelectMany(child => child switch
    {
        _ when IsName(child) => child is MemberAccessExpressionSyntax { Expression: not TypeSyntax and var owner } ? [owner] : [],
        TypeSyntax and not IdentifierNameSyntax => [],
        ExpressionSyntax expression => [expression],
        ArgumentListSyntax or ArgumentSyntax or InitializerExpressionSyntax or InterpolationSyntax or SwitchExpressionArmSyntax or BracketedArgumentListSyntax => Inner(child),
        _ => Array.Empty<ExpressionSyntax>(),
    });

    private static bool IsName(SyntaxNode node) =>
        (node.Parent is InvocationExpressionSyntax call && call.Expression == node)
        || node is MemberAccessExpressionSyntax { Expression: IdentifierNameSyntax { Identifier.Text: "StringComparison" or "CultureInfo" or "MidpointRounding" } };

    private sealed record Cut(int Start, int End, string Instead)
    {
        public Cut(SyntaxNode node, string instead)
            : this(node.SpanStart, node.Span.End, instead)
        {
        }
    }
}
