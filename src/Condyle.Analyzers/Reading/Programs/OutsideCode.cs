using System.Collections.Concurrent;
using System.Runtime.CompilerServices;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp.Syntax;

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
    private readonly ConcurrentDictionary<string, IReadOnlyList<SimpleNameSyntax>> mentions = new();

    private OutsideCode(Compilation compilation, CancellationToken cancellation)
    {
        files = [.. compilation.SyntaxTrees.Select(tree => CodeMentions.Of(tree, cancellation))];
        reached.UnionWith(files.SelectMany(file => file.Beginnings));
        RunsProgram = reached.Any(member => member.RunsProgram);
        Spread(member => member.Names, (file, names) => file.MentioningAny(names), cancellation);
        Spread(member => member.Mentions, (file, names) => file.NamedAny(names), cancellation);
    }

    public static OutsideCode Of(Compilation compilation, CancellationToken cancellation) => Kept.TryGetValue(compilation, out var known) ? known
        : new OutsideCode(compilation, cancellation) is var made ? Kept.GetValue(compilation, _ => made) : made;

    public bool IsEmpty => reached.Count == 0;

    /// <summary>Whether there is a main program, which makes rigs by their constructors without parameters.</summary>
    public bool RunsProgram { get; }

    /// <summary>Where the code that may run before a rig is built mentions a name; many rigs ask for the same.</summary>
    public IReadOnlyList<SimpleNameSyntax> MentionsOf(string name) => mentions.GetOrAdd(name, _ => [.. reached.Where(member => member.Mentions.Contains(name))
        .SelectMany(member => member.Code).SelectMany(code => code.DescendantNodes()).OfType<SimpleNameSyntax>().Where(mention => mention.Identifier.ValueText == name)]);

    /// <summary>All code that mentions a name.</summary>
    public IEnumerable<SyntaxNode> AllMentioning(string name) => files.SelectMany(file => file.Mentioning(name)).SelectMany(member => member.Code);

    // In waves, each of which asks every file once: a list of all rigs reaches as many names as there are files, and a keystroke begins anew.
    private void Spread(Func<CodeMentions.Member, IEnumerable<string>> names, Func<CodeMentions, HashSet<string>, IEnumerable<CodeMentions.Member>> next, CancellationToken cancellation)
    {
        var seen = new HashSet<string>();
        for (var wave = reached.ToList(); wave.Count > 0;)
        {
            var asked = new HashSet<string>(wave.SelectMany(names).Where(seen.Add));
            wave = [];
            foreach (var file in files)
            {
                cancellation.ThrowIfCancellationRequested();
                wave.AddRange(next(file, asked).Where(reached.Add));
            }
        }
    }
}
