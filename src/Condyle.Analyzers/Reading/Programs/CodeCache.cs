using System.Runtime.CompilerServices;
using Microsoft.CodeAnalysis;

namespace Condyle.Analyzers.Reading;

/// <summary>
/// Lowered code, kept with the file it came from. That is safe because lowered code holds no symbols, and because what it means depends
/// only on its own file, on what is declared elsewhere and on the few places elsewhere that it holds: where one of them has changed, it is
/// lowered anew. It goes when its file goes.
/// </summary>
internal sealed class CodeCache
{
    private static readonly ConditionalWeakTable<SyntaxTree, TreeCode> Kept = new();
    private readonly ConditionalWeakTable<Compilation, Declarations> declarations = new();
    private readonly ConditionalWeakTable<Compilation, Dictionary<string, SyntaxTree?>> trees = new();

    public TreeCode For(SyntaxTree tree, Compilation compilation)
    {
        var elsewhere = declarations.GetValue(compilation, Declarations.Of).Without(tree);
        var code = Kept.GetValue(tree, _ => new TreeCode(elsewhere));
        if (code.Elsewhere == elsewhere)
            return code;
        Kept.Remove(tree);
        var anew = Kept.GetValue(tree, _ => new TreeCode(elsewhere));
        // Another project that has the file may have been faster.
        return anew.Elsewhere == elsewhere ? anew : new TreeCode(elsewhere);
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

    /// <summary>The lowered bodies of one file.</summary>
    internal sealed class TreeCode(ulong elsewhere)
    {
        private readonly Dictionary<(BodyKind, string, int), CodeBody?> bodies = [];

        public ulong Elsewhere { get; } = elsewhere;

        public CodeBody? Get(BodyPlace place, Compilation compilation, Func<CodeBody?> lower)
        {
            lock (bodies)
            {
                if (bodies.TryGetValue(place.Key, out var known) && known?.Fits(compilation) != false)
                    return known;
            }

            // Lowering may take long and may be cancelled, so it is done outside the lock; two that do it get the same code.
            var body = lower();
            lock (bodies)
                bodies[place.Key] = body;
            return body;
        }
    }
}
