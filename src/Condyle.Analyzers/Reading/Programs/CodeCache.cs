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

    public TreeCode For(SyntaxTree tree, Compilation compilation)
    {
        var elsewhere = declarations.GetValue(compilation, Declarations.Of).Without(tree);
        var code = Kept.GetValue(tree, _ => new TreeCode(elsewhere));
        if (code.Elsewhere == elsewhere)
            return code;
        Kept.Remove(tree);
        return Kept.GetValue(tree, _ => new TreeCode(elsewhere));
    }

    /// <summary>The lowered bodies of one file.</summary>
    internal sealed class TreeCode(ulong elsewhere)
    {
        private readonly Dictionary<string, CodeBody?> bodies = [];

        public ulong Elsewhere { get; } = elsewhere;

        public CodeBody? Get(string id, Compilation compilation, Func<CodeBody?> lower)
        {
            lock (bodies)
            {
                if (bodies.TryGetValue(id, out var known) && known?.Fits(compilation) != false)
                    return known;
            }

            // Lowering may take long and may be cancelled, so it is done outside the lock; two that do it get the same code.
            var body = lower();
            lock (bodies)
                bodies[id] = body;
            return body;
        }
    }
}
