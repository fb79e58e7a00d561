using System.Runtime.CompilerServices;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace Condyle.Analyzers.Reporting;

/// <summary>
/// Which files can reach the code of a file, by the names that they use: a definition elsewhere can only run a helper here if it, or
/// something that it uses, names a type or an extension method of this file. Kept with each file.
/// </summary>
internal static class TreeReach
{
    private static readonly ConditionalWeakTable<SyntaxTree, Names> Kept = new();

    /// <summary>The other files that reach a file, in the order of the compilation.</summary>
    public static IReadOnlyList<SyntaxTree> Reaching(SyntaxTree tree, Compilation compilation, CancellationToken cancellation)
    {
        var wanted = new HashSet<string>(NamesOf(tree).Declared);
        var reaching = new HashSet<SyntaxTree>();
        for (var grows = true; grows;)
        {
            grows = false;
            foreach (var other in compilation.SyntaxTrees)
            {
                cancellation.ThrowIfCancellationRequested();
                if (other == tree || reaching.Contains(other) || !NamesOf(other).Used.Overlaps(wanted))
                    continue;
                reaching.Add(other);
                wanted.UnionWith(NamesOf(other).Declared);
                grows = true;
            }
        }

        return [.. compilation.SyntaxTrees.Where(reaching.Contains)];
    }

    private static Names NamesOf(SyntaxTree tree) => Kept.GetValue(tree, static of => Collect(of));

    private static Names Collect(SyntaxTree tree)
    {
        var root = tree.GetRoot();
        var declared = new HashSet<string>();
        foreach (var type in root.DescendantNodes(node => node is not BlockSyntax).OfType<BaseTypeDeclarationSyntax>())
        {
            declared.Add(type.Identifier.ValueText);
            if (type is TypeDeclarationSyntax { Members: var members })
                declared.UnionWith(members.Where(member => type is ExtensionBlockDeclarationSyntax || IsExtension(member)).Select(NameOf).OfType<string>());
        }

        var used = new HashSet<string>(root.DescendantTokens().Where(token => token.IsKind(SyntaxKind.IdentifierToken)).Select(token => token.ValueText));
        return new Names(declared, used);
    }

    private static bool IsExtension(MemberDeclarationSyntax member) =>
        member is MethodDeclarationSyntax method && method.ParameterList.Parameters.FirstOrDefault()?.Modifiers.Any(SyntaxKind.ThisKeyword) == true;

    private static string? NameOf(MemberDeclarationSyntax member) => member switch
    {
        MethodDeclarationSyntax method => method.Identifier.ValueText,
        PropertyDeclarationSyntax property => property.Identifier.ValueText,
        _ => null,
    };

    private sealed record Names(HashSet<string> Declared, HashSet<string> Used);
}
