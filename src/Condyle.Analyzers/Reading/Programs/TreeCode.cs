using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.Text;

namespace Condyle.Analyzers.Reading;

/// <summary>A lowered body; none where there is none.</summary>
/// <param name="Body">The code.</param>
/// <param name="From">The stretches of its file that it was made of; none where some of it stands in another one, as the initialisers of a type's other part do.</param>
internal readonly record struct LoweredCode(CodeBody? Body, IReadOnlyList<TextSpan>? From);

/// <summary>
/// The lowered bodies of one version of a file. Those of a member that the next version leaves as it is are moved there: what a body means depends on its
/// own text, on what its file declares and on what is declared elsewhere, and none of them has changed.
/// </summary>
internal sealed class TreeCode
{
    private readonly Dictionary<(BodyKind, string, int), LoweredCode> bodies = [];
    private readonly SyntaxTree tree;
    private readonly Lazy<MemberTexts> members;

    private TreeCode(SyntaxTree tree, ulong elsewhere)
    {
        (this.tree, Elsewhere) = (tree, elsewhere);
        members = new(() => MemberTexts.Of(tree));
    }

    public string Path => tree.FilePath;

    /// <summary>The fingerprint of what is declared in the other files.</summary>
    public ulong Elsewhere { get; }

    /// <summary>Whether it is that of this very version.</summary>
    public bool IsOf(SyntaxTree version, ulong elsewhere) => tree == version && Elsewhere == elsewhere;

    /// <summary>The code of a file with what still holds of the version before, if there was one.</summary>
    public static TreeCode Of(SyntaxTree tree, ulong elsewhere, TreeCode? before)
    {
        var code = new TreeCode(tree, elsewhere);
        if (before is null || before.tree == tree || before.Elsewhere != elsewhere || Declarations.PrintOf(before.tree) != Declarations.PrintOf(tree) || !before.tree.Options.Equals(tree.Options))
            return code;
        var relocation = new Relocation(code.Path, before.members.Value.KeptIn(code.members.Value));
        foreach (var (key, was) in before.Bodies())
        {
            if (relocation.TryMove(was, out var now))
                code.bodies[key] = now;
        }

        return code;
    }

    public CodeBody? Get(BodyPlace place, Compilation compilation, Func<LoweredCode> lower)
    {
        lock (bodies)
        {
            if (bodies.TryGetValue(place.Key, out var known) && known.Body?.Fits(compilation) != false)
                return known.Body;
        }

        // Lowering may take long and may be cancelled, so it is done outside the lock; two that do it get the same code.
        var lowered = lower();
        lock (bodies)
            bodies[place.Key] = lowered;
        return lowered.Body;
    }

    /// <summary>What has been lowered so far, or moved here.</summary>
    public IReadOnlyList<((BodyKind, string, int) Key, LoweredCode Code)> Bodies()
    {
        lock (bodies)
            return [.. bodies.Select(pair => (pair.Key, pair.Value))];
    }
}
