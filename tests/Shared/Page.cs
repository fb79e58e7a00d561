using System.Text.RegularExpressions;

namespace Condyle.Tests.Shared;

/// <summary>
/// A page of the repository, as the tests read it. What a block of code stands in, or which command prints what a block shows, is said in an HTML comment
/// before it, as in <c>&lt;!-- in: RigDraft rig, Side side --&gt;</c> and <c>&lt;!-- prints: dotnet run --project sample-rigs/Quayside --&gt;</c>.
/// </summary>
internal sealed partial record Page(string Path, IReadOnlyList<PageBlock> Blocks)
{
    public static Page Read(string root, string path) => new(path, [.. BlocksIn(path, File.ReadAllText(System.IO.Path.Combine(root, path)).ReplaceLineEndings("\n"))]);

    /// <summary>All pages that users and contributors read: those at the top, the guide, and those that lie beside the code.</summary>
    public static IEnumerable<Page> All(string root)
    {
        return Directory.GetFiles(root, "*.md").Concat(Below("docs")).Concat(Below("src"))
            .Select(file => System.IO.Path.GetRelativePath(root, file).Replace('\\', '/'))
            .Where(path => !path.Split('/').Any(part => part is "bin" or "obj"))
            .Order(StringComparer.Ordinal)
            .Select(path => Read(root, path));

        IEnumerable<string> Below(string folder) => Directory.GetFiles(System.IO.Path.Combine(root, folder), "*.md", SearchOption.AllDirectories);
    }

    private static IEnumerable<PageBlock> BlocksIn(string path, string text)
    {
        var before = 0;
        foreach (Match fence in Fences().Matches(text))
        {
            var lead = text[before..fence.Index];
            before = fence.Index + fence.Length;
            yield return new PageBlock(
                $"{path}:{text[..fence.Index].Count(c => c == '\n') + 1}",
                fence.Groups["kind"].Value,
                fence.Groups["text"].Value,
                FileNamedIn(lead.TrimEnd().Split('\n')[^1]),
                Notes().Matches(lead).ToDictionary(note => note.Groups["key"].Value, note => note.Groups["value"].Value));
        }
    }

    /// <summary>The sentence before a block names its file where it leads to it, by its colon.</summary>
    private static string FileNamedIn(string sentence) => sentence.EndsWith(':') ? FileNames().Matches(sentence).LastOrDefault()?.Groups["name"].Value ?? "" : "";

    [GeneratedRegex(@"^```(?<kind>[^`\n]*)\n(?<text>.*?)^```$", RegexOptions.Multiline | RegexOptions.Singleline)]
    private static partial Regex Fences();

    [GeneratedRegex(@"^<!-- (?<key>in|finds|prints): (?<value>.*) -->$", RegexOptions.Multiline)]
    private static partial Regex Notes();

    [GeneratedRegex(@"`(?<name>[\w.]+\.\w+)`")]
    private static partial Regex FileNames();
}

/// <summary>A fenced block of a page.</summary>
/// <param name="Place">Its page and line.</param>
/// <param name="Kind">What stands behind the fence.</param>
/// <param name="Text">What is shown.</param>
/// <param name="File">The file that the sentence before it names, or nothing.</param>
/// <param name="Notes">What comments before it say of it.</param>
internal sealed record PageBlock(string Place, string Kind, string Text, string File, IReadOnlyDictionary<string, string> Notes)
{
    /// <summary>What becomes of a file's text by a block that shows a difference.</summary>
    public string Change(string text)
    {
        var lines = Text.Split('\n');
        return text.Replace(Of('-'), Of('+'), StringComparison.Ordinal);

        string Of(char mark) => string.Join('\n', lines.Where(line => line.StartsWith(mark)).Select(line => line[1..]));
    }
}
