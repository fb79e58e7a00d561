using System.CommandLine;
using Condyle.Naming;

namespace Condyle.Host.Commands;

/// <summary>Says what someone may have meant who wrote a name that isn't there.</summary>
internal static class Nearest
{
    /// <summary>A sentence without its full stop.</summary>
    public static string To(string name, IEnumerable<string> known, int most = 3) =>
        $"The nearest: {string.Join(", ", NearestNames.To(name, known, most).Select(near => $"'{near}'"))}";

    /// <summary>The verb or option that is nearest to the first word that the command line doesn't know; nothing where it knows them all, or the verb takes none.</summary>
    public static string ToUnknownWordOf(ParseResult parsed)
    {
        if (parsed.UnmatchedTokens is not [var word, ..])
            return "";
        var command = parsed.CommandResult.Command;
        IReadOnlyList<string> known = word.StartsWith('-') ? [.. command.Options.Select(option => option.Name)] : [.. command.Subcommands.Select(verb => verb.Name)];
        return known.Count == 0 ? "" : $" {To(word, known, most: 1)}.";
    }
}
