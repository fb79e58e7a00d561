using System.Text.RegularExpressions;
using Condyle.Analyzers.Tests.Skeletons;
using Condyle.Rules;

namespace Condyle.Analyzers.Tests.Reporting;

/// <summary>The code on a rule's page is compiled and analysed: it does what the page says.</summary>
public partial class RulePageTests
{
    private static readonly Lazy<string> Skeleton = new(() =>
        GeneratorRun.Of(File.ReadAllText(Repository.PathTo("sample-rigs", "Quayside", "stevedore.gltf")), "stevedore.gltf").Code);

    public static TheoryData<string> Ids => [.. RuleBook.All.Select(rule => rule.Id)];

    public static TheoryData<string> AcceptableIds => [.. RuleBook.All.Where(rule => Blocks(rule.Id, "accepted").Count > 0).Select(rule => rule.Id)];

    [Theory]
    [MemberData(nameof(Ids))]
    public async Task Wrong_code_is_flagged_with_the_pages_rule_and_no_other(string id) =>
        Assert.Equal([id], (await FindingsOf(id, "wrong")).Distinct());

    [Theory]
    [MemberData(nameof(Ids))]
    public async Task Right_code_is_not_flagged(string id) => Assert.Empty(await FindingsOf(id, "right"));

    [Theory]
    [MemberData(nameof(AcceptableIds))]
    public async Task Accepted_code_is_not_flagged_but_would_be(string id)
    {
        Assert.Empty(await FindingsOf(id, "accepted"));
        Assert.Equal([id], await FindingsOf(id, "accepted", code => Acceptance().Replace(code, "")));
    }

    private static async Task<IEnumerable<string>> FindingsOf(string id, string kind, Func<string, string>? change = null)
    {
        var found = new List<string>();
        var blocks = Blocks(id, kind);
        Assert.NotEmpty(blocks);
        foreach (var block in blocks)
        {
            (string, string)[] files = [.. new RigSnippet(change?.Invoke(block) ?? block, More: SettingsOf(id)).PlainFiles, ("/0/StevedoreSkeleton.g.cs", Skeleton.Value)];
            found.AddRange((await FrontEnds.Read(files)).Select(finding => finding.Id));
        }

        return found;
    }

    /// <summary>The settings that a page's code goes by, as a build hands them on.</summary>
    private static string SettingsOf(string id)
    {
        var settings = Settings().Match(RuleBook.Find(id)!.Page).Groups["code"].Value;
        return settings.Length == 0 ? "" : $"[assembly: RigConventions({string.Join(", ", Setting().Matches(settings).Select(set => $"{set.Groups["name"]} = \"{set.Groups["value"]}\""))})]";
    }

    private static IReadOnlyList<string> Blocks(string id, string kind) =>
        [.. Fence().Matches(RuleBook.Find(id)!.Page).Where(block => block.Groups["kind"].Value == kind).Select(block => block.Groups["code"].Value)];

    [GeneratedRegex("^```csharp (?<kind>[a-z]+)\n(?<code>.*?)^```$", RegexOptions.Multiline | RegexOptions.Singleline)]
    private static partial Regex Fence();

    [GeneratedRegex("^```xml settings\n(?<code>.*?)^```$", RegexOptions.Multiline | RegexOptions.Singleline)]
    private static partial Regex Settings();

    [GeneratedRegex("<Condyle(?<name>[A-Za-z]+)>(?<value>.*)</")]
    private static partial Regex Setting();

    [GeneratedRegex("""\.Accept\(.*?\)(?=;)""")]
    private static partial Regex Acceptance();
}
