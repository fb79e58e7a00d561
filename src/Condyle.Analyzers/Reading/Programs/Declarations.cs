using System.Runtime.CompilerServices;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace Condyle.Analyzers.Reading;

/// <summary>
/// The fingerprint of what a compilation declares: all files without the bodies of their members but with initialisers, references and
/// options. Lowered code of a file depends on the files around it only through that.
/// </summary>
internal sealed class Declarations
{
    private static readonly ConditionalWeakTable<SyntaxTree, Print> Prints = new();

    private Declarations(ulong all) => All = all;

    public ulong All { get; }

    public static Declarations Of(Compilation compilation)
    {
        // A sum, so that one file's share can be taken out again. The options by identity, like the references: the compiler's own can't be hashed.
        var sum = (ulong)RuntimeHelpers.GetHashCode(compilation.Options) * 31;
        foreach (var reference in compilation.References)
            sum += (ulong)RuntimeHelpers.GetHashCode(reference) * 0x9E3779B97F4A7C15;
        var order = 0UL;
        foreach (var tree in compilation.SyntaxTrees)
        {
            sum += PrintOf(tree);
            // The parts of a type are set up in the order of their files.
            order = (order ^ (uint)StringComparer.Ordinal.GetHashCode(tree.FilePath)) * 1099511628211;
        }

        return new Declarations(sum + order);
    }

    public ulong Without(SyntaxTree tree) => All - PrintOf(tree);

    /// <summary>The fingerprint of what one file declares.</summary>
    public static ulong PrintOf(SyntaxTree tree) => Prints.GetValue(tree, static of => new Print(Hash(of))).Value;

    private static ulong Hash(SyntaxTree tree)
    {
        var hash = 14695981039346656037UL;
        foreach (var character in tree.FilePath)
            hash = (hash ^ character) * 1099511628211;
        var pending = new Stack<SyntaxNodeOrToken>([tree.GetRoot()]);
        while (pending.Count > 0)
        {
            var next = pending.Pop();
            if (next.AsNode() is { } node)
            {
                // A function in an initialiser is part of it, with all that is in it; and a property has a field of its own if its body uses it.
                if (node is BlockSyntax or ArrowExpressionClauseSyntax && !node.Ancestors().Any(around => around is AnonymousFunctionExpressionSyntax))
                {
                    if (node.Parent is AccessorDeclarationSyntax or PropertyDeclarationSyntax && node.DescendantNodes().Any(part => part.IsKind(SyntaxKind.FieldExpression)))
                        hash = (hash ^ '=') * 1099511628211;
                    continue;
                }

                // Also what lies in what: the same words make other declarations where a brace too many ends a namespace.
                var children = node.ChildNodesAndTokens();
                hash = (((hash ^ (ulong)node.RawKind) * 1099511628211) ^ (ulong)children.Count) * 1099511628211;
                foreach (var child in children.Reverse())
                    pending.Push(child);
                continue;
            }

            foreach (var character in next.AsToken().Text)
                hash = (hash ^ character) * 1099511628211;
            hash = (hash ^ ' ') * 1099511628211;
        }

        return hash;
    }

    private sealed class Print(ulong value)
    {
        public ulong Value { get; } = value;
    }
}
