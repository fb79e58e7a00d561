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

    private static readonly HashSet<string> Builders = ["Build", "Examine", "Run"];

    /// <summary>The expressions by which something of a name is written.</summary>
    public static IEnumerable<ExpressionSyntax> Of(string name, Compilation compilation, CancellationToken cancellation) =>
        compilation.SyntaxTrees.SelectMany(tree => WritesIn(tree, cancellation).TryGetValue(name, out var written) ? (IEnumerable<ExpressionSyntax>)written : []);

    private static Dictionary<string, List<ExpressionSyntax>> WritesIn(SyntaxTree tree, CancellationToken cancellation)
    {
        if (Kept.TryGetValue(tree, out var known))
            return known;
        var writes = new Dictionary<string, List<ExpressionSyntax>>();
        foreach (var written in Building(tree.GetRoot(cancellation)).SelectMany(code => code.DescendantNodes()).SelectMany(Written))
        {
            if (NameOf(written) is not { } name)
                continue;
            if (!writes.TryGetValue(name, out var some))
                writes[name] = some = [];
            some.Add(written);
        }

        return Kept.GetValue(tree, _ => writes);
    }

    // The types, and the statements of a program, that call what builds a rig: or what makes its main program of a project.
    private static IEnumerable<SyntaxNode> Building(SyntaxNode file) => file.DescendantNodes().OfType<InvocationExpressionSyntax>()
        .Where(call => call.Expression is MemberAccessExpressionSyntax { Name.Identifier.ValueText: var name } && Builders.Contains(name))
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
