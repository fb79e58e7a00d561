using System.Collections.Concurrent;
using System.Runtime.CompilerServices;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace Condyle.Analyzers.Reading;

/// <summary>
/// The code that may run before a rig is built: what calls the building of rigs, who calls that, and all that those call, by their names alone. So it may
/// be more than there is, and is never less as long as a name is mentioned where it is called; what is called without its name goes with its type.
/// </summary>
internal sealed class OutsideCode
{
    private static readonly ConditionalWeakTable<Compilation, OutsideCode> Kept = new();
    private readonly CodeMentions[] files;
    private readonly OutsideReach reach;
    private readonly ConcurrentDictionary<string, IReadOnlyList<SimpleNameSyntax>> mentions = new();

    private OutsideCode(Compilation compilation, CancellationToken cancellation)
    {
        files = [.. compilation.SyntaxTrees.Select(tree => CodeMentions.Of(tree, cancellation))];
        reach = OutsideReach.Of(compilation, files, cancellation);
    }

    public static OutsideCode Of(Compilation compilation, CancellationToken cancellation) => Kept.TryGetValue(compilation, out var known) ? known
        : new OutsideCode(compilation, cancellation) is var made ? Kept.GetValue(compilation, _ => made) : made;

    public bool IsEmpty => reach.IsEmpty;

    /// <summary>Whether there is a main program, which makes rigs by their constructors without parameters.</summary>
    public bool RunsProgram => reach.RunsProgram;

    /// <summary>Where the code that may run before a rig is built mentions a name; many rigs ask for the same.</summary>
    public IReadOnlyList<SimpleNameSyntax> MentionsOf(string name) => mentions.GetOrAdd(name, _ => [.. reach.Mentioning(name).SelectMany(member => files[member.File].CodeOf(member.Number))
        .SelectMany(code => code.DescendantNodes()).OfType<SimpleNameSyntax>().Where(mention => mention.Identifier.ValueText == name)]);

    /// <summary>The names by which a type is called: its own, and aliases.</summary>
    public IReadOnlyCollection<string> NamesFor(string type) => [type, .. files.SelectMany(file => file.Mentioning(type).Where(member => file.CodeOf(member) is [UsingDirectiveSyntax]).SelectMany(member => file.Members[member].Names))];

    /// <summary>All code that mentions a name.</summary>
    public IEnumerable<SyntaxNode> AllMentioning(string name) => files.SelectMany(file => file.Mentioning(name).SelectMany(file.CodeOf));
}
