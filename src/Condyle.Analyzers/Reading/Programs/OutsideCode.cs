using System.Runtime.CompilerServices;
using Microsoft.CodeAnalysis;

namespace Condyle.Analyzers.Reading;

/// <summary>
/// The code that may run before a rig is built: what calls the building of rigs, who calls that, and all that those call, by their names alone. So it may
/// be more than there is, and is never less as long as a name is mentioned where it is called.
/// </summary>
internal sealed class OutsideCode
{
    private static readonly ConditionalWeakTable<Compilation, OutsideCode> Kept = new();
    private readonly CodeMentions[] files;
    private readonly HashSet<CodeMentions.Member> reached = [];

    private OutsideCode(Compilation compilation, CancellationToken cancellation)
    {
        files = [.. compilation.SyntaxTrees.Select(tree => CodeMentions.Of(tree, cancellation))];
        reached.UnionWith(files.SelectMany(file => file.Beginnings));
        RunsProgram = reached.Any(member => member.RunsProgram);
        Spread(member => member.Names, (file, name) => file.Mentioning(name), cancellation);
        Spread(member => member.Mentions, (file, name) => file.Named(name), cancellation);
    }

    public static OutsideCode Of(Compilation compilation, CancellationToken cancellation) => Kept.TryGetValue(compilation, out var known) ? known
        : new OutsideCode(compilation, cancellation) is var made ? Kept.GetValue(compilation, _ => made) : made;

    public bool IsEmpty => reached.Count == 0;

    /// <summary>Whether there is a main program, which makes rigs by their constructors without parameters.</summary>
    public bool RunsProgram { get; }

    /// <summary>The code that may run before a rig is built and that mentions a name.</summary>
    public IEnumerable<SyntaxNode> Mentioning(string name) => reached.Where(member => member.Mentions.Contains(name)).SelectMany(member => member.Code);

    /// <summary>All code that mentions a name.</summary>
    public IEnumerable<SyntaxNode> AllMentioning(string name) => files.SelectMany(file => file.Mentioning(name)).SelectMany(member => member.Code);

    private void Spread(Func<CodeMentions.Member, IEnumerable<string>> names, Func<CodeMentions, string, IReadOnlyList<CodeMentions.Member>> next, CancellationToken cancellation)
    {
        var seen = new HashSet<string>();
        var pending = new Stack<CodeMentions.Member>(reached);
        while (pending.Count > 0)
        {
            cancellation.ThrowIfCancellationRequested();
            foreach (var name in names(pending.Pop()).Where(seen.Add))
            {
                foreach (var member in files.SelectMany(file => next(file, name)).Where(reached.Add))
                    pending.Push(member);
            }
        }
    }
}
