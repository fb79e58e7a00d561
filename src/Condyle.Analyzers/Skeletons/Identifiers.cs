using System.Text;
using Microsoft.CodeAnalysis.CSharp;

namespace Condyle.Analyzers.Skeletons;

/// <summary>From names in files to names in C#.</summary>
internal static class Identifiers
{
    /// <summary>The words of a name, each with a capital: <c>elbow_twist_1</c> becomes <c>ElbowTwist1</c>.</summary>
    public static string Pascal(string name, string whenEmpty)
    {
        var pascal = new StringBuilder(name.Length);
        var startsWord = true;
        foreach (var character in name)
        {
            var belongs = character != '_' && SyntaxFacts.IsIdentifierPartCharacter(character);
            if (belongs)
                pascal.Append(startsWord ? char.ToUpperInvariant(character) : character);
            startsWord = !belongs;
        }

        if (pascal.Length == 0)
            return whenEmpty;
        return SyntaxFacts.IsIdentifierStartCharacter(pascal[0]) ? pascal.ToString() : whenEmpty + pascal;
    }

    public static bool IsValid(string name) => SyntaxFacts.IsValidIdentifier(name) && SyntaxFacts.GetKeywordKind(name) == SyntaxKind.None;

    /// <summary>A namespace that compiles, whatever the project is called.</summary>
    public static string Namespace(string rootNamespace) =>
        string.Join(".", rootNamespace.Split('.').Where(static part => part.Length > 0).Select(static part => IsValid(part) ? part : Repaired(part)));

    private static string Repaired(string part)
    {
        if (SyntaxFacts.IsValidIdentifier(part))
            return "@" + part;
        var repaired = new string([.. part.Select(static character => SyntaxFacts.IsIdentifierPartCharacter(character) ? character : '_')]);
        return SyntaxFacts.IsIdentifierStartCharacter(repaired[0]) ? repaired : "_" + repaired;
    }
}
