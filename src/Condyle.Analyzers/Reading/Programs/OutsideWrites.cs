using System.Runtime.CompilerServices;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace Condyle.Analyzers.Reading;

/// <summary>
/// Where code that builds rigs writes members, by their names alone: what it sets, a definition doesn't find as it was initialised. A file's answer depends on
/// nothing but its text and is kept with it.
/// </summary>
internal static class OutsideWrites
{
    private static readonly ConditionalWeakTable<SyntaxTree, Dictionary<string, List<ExpressionSyntax>>> Kept = new();
    private static readonly ConditionalWeakTable<Compilation, Dictionary<string, List<ExpressionSyntax>>> OfAll = new();
    private static readonly Dictionary<string, HashSet<string>> Builders = new() { ["Rig"] = ["Build", "Examine"], ["RigProgram"] = ["Run"] };

    /// <summary>The expressions by which something of a name is written.</summary>
    public static IReadOnlyList<ExpressionSyntax> Of(string name, Compilation compilation, CancellationToken cancellation)
    {
        if (!OfAll.TryGetValue(compilation, out var all))
        {
            all = [];
            foreach (var tree in compilation.SyntaxTrees)
                AddTo(all, WritesIn(tree, cancellation).SelectMany(some => some.Value));
            all = OfAll.GetValue(compilation, _ => all);
        }

        return all.TryGetValue(name, out var written) ? written : [];
    }

    private static Dictionary<string, List<ExpressionSyntax>> WritesIn(SyntaxTree tree, CancellationToken cancellation)
    {
        if (Kept.TryGetValue(tree, out var known))
            return known;
        var writes = new Dictionary<string, List<ExpressionSyntax>>();
        AddTo(writes, Building(tree.GetRoot(cancellation)).SelectMany(code => code.DescendantNodes()).SelectMany(Written));
        return Kept.GetValue(tree, _ => writes);
    }

    private static void AddTo(Dictionary<string, List<ExpressionSyntax>> writes, IEnumerable<ExpressionSyntax> written)
    {
        foreach (var one in written)
        {
            if (NameOf(one) is not { } name)
                continue;
            if (!writes.TryGetValue(name, out var some))
                writes[name] = some = [];
            some.Add(one);
        }
    }

    // The types, and the statements of a program, that call what builds a rig, or what makes the main program of a project.
    private static IEnumerable<SyntaxNode> Building(SyntaxNode file) => file.DescendantNodes().OfType<InvocationExpressionSyntax>()
        .Where(call => call.Expression is MemberAccessExpressionSyntax { Expression: var type, Name.Identifier.ValueText: var name }
            && Builders.TryGetValue(NameOf(type) ?? "", out var methods) && methods.Contains(name))
        .Select(call => (SyntaxNode?)call.FirstAncestorOrSelf<TypeDeclarationSyntax>() ?? file)
        .Distinct();

    private static IEnumerable<ExpressionSyntax> Written(SyntaxNode node) => node switch
    {
        AssignmentExpressionSyntax { Left: TupleExpressionSyntax several } => several.Arguments.Select(argument => argument.Expression),
        AssignmentExpressionSyntax assignment => [assignment.Left],
        PrefixUnaryExpressionSyntax { RawKind: (int)SyntaxKind.PreIncrementExpression or (int)SyntaxKind.PreDecrementExpression } counted => [counted.Operand],
        PostfixUnaryExpressionSyntax { RawKind: (int)SyntaxKind.PostIncrementExpression or (int)SyntaxKind.PostDecrementExpression } counted => [counted.Operand],
        ArgumentSyntax { RefKindKeyword.RawKind: (int)SyntaxKind.RefKeyword or (int)SyntaxKind.OutKeyword } handed => [handed.Expression],
        _ => [],
    };

    private static string? NameOf(ExpressionSyntax written) => written switch
    {
        IdentifierNameSyntax name => name.Identifier.ValueText,
        MemberAccessExpressionSyntax access => access.Name.Identifier.ValueText,
        MemberBindingExpressionSyntax access => access.Name.Identifier.ValueText,
        _ => null,
    };
}
