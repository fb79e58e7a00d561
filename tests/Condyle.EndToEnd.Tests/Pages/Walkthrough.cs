using System.Text.RegularExpressions;

namespace Condyle.EndToEnd.Tests.Pages;

/// <summary>A page that someone follows from top to bottom: its blocks in order, each with the file that the sentence above it names.</summary>
internal static partial class Walkthrough
{
    public static IReadOnlyList<Block> In(string page) =>
        [.. Fences().Matches(page.ReplaceLineEndings("\n")).Select(fence => new Block(
            fence.Groups["kind"].Value,
            fence.Groups["text"].Value,
            Names().Matches(fence.Groups["before"].Value).LastOrDefault()?.Groups["name"].Value ?? ""))];

    /// <summary>The sentence before the block counts where it leads to it, by its colon.</summary>
    [GeneratedRegex(@"(?:^(?<before>[^\n]*:)\n\n)?^```(?<kind>\w+)\n(?<text>.*?)^```$", RegexOptions.Multiline | RegexOptions.Singleline)]
    private static partial Regex Fences();

    [GeneratedRegex(@"`(?<name>[\w.]+\.\w+)`")]
    private static partial Regex Names();

    /// <summary>A block of a page, and the file that the sentence before it names, if it names one.</summary>
    internal sealed record Block(string Kind, string Text, string File);
}
