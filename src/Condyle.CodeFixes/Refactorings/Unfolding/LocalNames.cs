using Condyle.Model;
using Condyle.Naming;
using Microsoft.CodeAnalysis.CSharp;

namespace Condyle.CodeFixes.Refactorings;

/// <summary>Names for the locals of what is written out, after the nodes that they hold, beside those that the code has already.</summary>
internal sealed class LocalNames(IEnumerable<string> taken, Conventions conventions)
{
    private readonly HashSet<string> taken = new(taken, StringComparer.Ordinal);

    public string For(RigEvent said)
    {
        var name = said switch
        {
            CopyMade copy => $"{copy.Tag}_copy",
            INamedEvent named => WithoutSide(named.Name),
            TwoBoneBegun or ManyBoneBegun or CurveBegun => "solver",
            ChainDeclared => "bones",
            _ => said.GetType().Name.Replace("Begun", "").Replace("Asked", ""),
        };
        return Free(Camel(name));
    }

    public string Free(string name)
    {
        var free = name;
        for (var number = 2; !taken.Add(free); number++)
            free = name + number;
        return free;
    }

    private string WithoutSide(Text name) =>
        SidedName.Of(name, conventions) is { } sided ? sided.Name.Remove(sided.MarkAt, conventions.MarkOf(sided.Side).Length) : name.ToString();

    private static string Camel(string name)
    {
        var words = name.Split(name.Where(letter => !char.IsLetterOrDigit(letter)).Distinct().ToArray(), StringSplitOptions.RemoveEmptyEntries);
        var joined = string.Concat(words.Select((word, i) => (i == 0 ? char.ToLowerInvariant(word[0]) : char.ToUpperInvariant(word[0])) + word.Substring(1)));
        return joined.Length == 0 || !char.IsLetter(joined[0]) ? "part" + joined : SyntaxFacts.GetKeywordKind(joined) != SyntaxKind.None ? joined + "Part" : joined;
    }
}
