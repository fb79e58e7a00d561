using Microsoft.CodeAnalysis;

namespace Condyle.Analyzers.Reporting;

/// <summary>
/// Which files of a compilation can reach the code of a file, by the names that they use: a definition elsewhere can only run a helper here if it, or
/// something that it uses, names a type or an extension member of this file.
/// </summary>
internal sealed class TreeReach(Compilation compilation)
{
    private readonly SyntaxTree[] trees = [.. compilation.SyntaxTrees];
    private readonly FileNames?[] names = new FileNames?[compilation.SyntaxTrees.Count()];

    /// <summary>The other files that reach a file: those that name it first, then those that name them; each in the order of the compilation.</summary>
    public IEnumerable<SyntaxTree> Reaching(SyntaxTree tree, CancellationToken cancellation)
    {
        var reached = new bool[trees.Length];
        reached[Array.IndexOf(trees, tree)] = true;
        var own = FileNames.Of(tree);
        var (wanted, byAll) = (new HashSet<int>(own.Declared), own.IsUnspoken);
        while (wanted.Count > 0 || byAll)
        {
            var next = new HashSet<int>();
            var nextByAll = false;
            for (var i = 0; i < trees.Length; i++)
            {
                cancellation.ThrowIfCancellationRequested();
                if (reached[i] || !(byAll || NamesOf(i).UsesAnyOf(wanted)))
                    continue;
                reached[i] = true;
                next.UnionWith(NamesOf(i).Declared);
                nextByAll |= NamesOf(i).IsUnspoken;
                yield return trees[i];
            }

            (wanted, byAll) = (next, nextByAll);
        }
    }

    private FileNames NamesOf(int index) => names[index] ??= FileNames.Of(trees[index]);
}
