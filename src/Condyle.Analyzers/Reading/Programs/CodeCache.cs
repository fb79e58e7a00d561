using System.Runtime.CompilerServices;
using Microsoft.CodeAnalysis;

namespace Condyle.Analyzers.Reading;

/// <summary>
/// Lowered code, kept with the file it came from, and with its next version what of it still holds. That is safe because lowered code holds no symbols, and
/// because what it means depends only on its own file, on what is declared elsewhere and on the few places elsewhere that it holds: where one of them has
/// changed, it is lowered anew. It goes when its file goes.
/// </summary>
internal sealed class CodeCache
{
    private static readonly ConditionalWeakTable<SyntaxTree, TreeCode> Kept = new();
    private static readonly KeptWhileTyping<RecentCode> Recent = new();
    private readonly ConditionalWeakTable<Compilation, Declarations> declarations = new();
    private readonly ConditionalWeakTable<Compilation, Dictionary<string, SyntaxTree?>> trees = new();

    public TreeCode For(SyntaxTree tree, Compilation compilation)
    {
        var elsewhere = declarations.GetValue(compilation, Declarations.Of).Without(tree);
        if (Kept.TryGetValue(tree, out var code) && code.Elsewhere == elsewhere)
            return code;
        var anew = Recent.Of(compilation, static same => same, static () => new RecentCode()).Of(tree, elsewhere);
        Kept.Remove(tree);
        // Another project that has the file may have been faster.
        return Kept.GetValue(tree, _ => anew) is var kept && kept.Elsewhere == elsewhere ? kept : anew;
    }

    /// <summary>What readings have asked about all that is declared.</summary>
    public DeclaredFacts FactsOf(Compilation compilation) =>
        DeclaredFacts.Of(compilation, declarations.GetValue(compilation, Declarations.Of));

    /// <summary>The file at a path; none where several have the same.</summary>
    public SyntaxTree? TreeAt(string path, Compilation compilation) => trees.GetValue(compilation, ByPath).TryGetValue(path, out var tree) ? tree : null;

    // A place is told by its file's path: where two files have the same, which of them is meant isn't known.
    private static Dictionary<string, SyntaxTree?> ByPath(Compilation compilation)
    {
        var byPath = new Dictionary<string, SyntaxTree?>();
        foreach (var tree in compilation.SyntaxTrees)
            byPath[tree.FilePath] = byPath.ContainsKey(tree.FilePath) ? null : tree;
        return byPath;
    }
}
