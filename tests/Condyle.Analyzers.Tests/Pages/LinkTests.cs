using System.Text.RegularExpressions;
using Condyle.Analyzers.Tests.Skeletons;
using Condyle.Tests.Shared;

namespace Condyle.Analyzers.Tests.Pages;

/// <summary>A page leads where it says, and every page is found from the list of pages.</summary>
public partial class LinkTests
{
    public static TheoryData<string> Paths => [.. Page.All(Repository.PathTo()).Select(page => page.Path)];

    [Theory]
    [MemberData(nameof(Paths))]
    public void Links_within_the_repository_lead_somewhere(string path) => Assert.All(Links(path), link =>
    {
        var target = Repository.PathTo(link.Target);
        Assert.True(File.Exists(target) || Directory.Exists(target), $"{path} leads to {link.Target}, which isn't there.");
        if (link.Heading.Length > 0)
            Assert.Contains(link.Heading, Headings(File.ReadAllText(target)));
    });

    [Fact]
    public void The_list_of_pages_has_every_page_and_every_recipe()
    {
        string[] pages = [.. Directory.GetFiles(Repository.PathTo("docs"), "*.md"), .. Directory.GetFiles(Repository.PathTo("src", "Condyle", "Recipes"), "*.md")];
        var listed = Links("docs/README.md").Select(link => link.Target).Append("docs/README.md").ToHashSet();
        Assert.All(pages, page => Assert.Contains(Path.GetRelativePath(Repository.PathTo(), page).Replace('\\', '/'), listed));
    }

    private static IEnumerable<(string Target, string Heading)> Links(string path)
    {
        var folder = Path.GetDirectoryName(Repository.PathTo(path))!;
        foreach (Match link in Link().Matches(Fence().Replace(File.ReadAllText(Repository.PathTo(path)).ReplaceLineEndings("\n"), "")))
        {
            var target = link.Groups["target"].Value is "" ? Repository.PathTo(path) : Path.GetFullPath(Path.Combine(folder, link.Groups["target"].Value));
            yield return (Path.GetRelativePath(Repository.PathTo(), target).Replace('\\', '/'), link.Groups["heading"].Value);
        }
    }

    /// <summary>As code hosts make addresses of headings: in lower case, hyphens for blanks, and without other signs.</summary>
    private static IEnumerable<string> Headings(string text) =>
        Heading().Matches(text.ReplaceLineEndings("\n")).Select(heading => OtherSign().Replace(heading.Groups["text"].Value.ToLowerInvariant(), "").Replace(' ', '-'));

    [GeneratedRegex(@"\]\((?!https?:)(?<target>[^)#\s]*)(#(?<heading>[^)\s]+))?\)")]
    private static partial Regex Link();

    [GeneratedRegex("^```.*?^```$", RegexOptions.Multiline | RegexOptions.Singleline)]
    private static partial Regex Fence();

    [GeneratedRegex("^#+ (?<text>.+)$", RegexOptions.Multiline)]
    private static partial Regex Heading();

    [GeneratedRegex(@"[^\w\- ]")]
    private static partial Regex OtherSign();
}
