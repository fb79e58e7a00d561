using System.Text.RegularExpressions;
using Condyle.Rules;

namespace Condyle.Tests.Rules;

/// <summary>What holds for every rule.</summary>
public partial class RuleBookTests
{
    public static TheoryData<string> Ids => [.. RuleBook.All.Select(rule => rule.Id)];

    [Fact]
    public void Ids_are_unique_and_in_order() =>
        Assert.Equal(RuleBook.All.Select(rule => rule.Id).Distinct().Order(StringComparer.Ordinal), RuleBook.All.Select(rule => rule.Id));

    [Fact]
    public void Every_rule_of_the_code_is_in_the_book() => Assert.Equal(
        typeof(Rule).Assembly.GetTypes().Where(type => type.IsSubclassOf(typeof(Rule)) && !type.IsAbstract).Select(type => type.Name).Order(),
        RuleBook.All.Select(rule => rule.GetType().Name).Order());

    [Fact]
    public void What_the_build_says_besides_has_a_page_that_names_it_and_its_severity() => Assert.All(BuildProblem.All, problem =>
    {
        Assert.StartsWith($"# {problem.Id}: {problem.Title}\n\n{RulePage.SummaryOf(problem.Id)}\n", problem.Page, StringComparison.Ordinal);
        Assert.Contains($"\nDefault severity: {problem.Severity.ToString().ToLowerInvariant()}.", problem.Page, StringComparison.Ordinal);
        Assert.Null(RuleBook.Find(problem.Id));
    });

    [Theory]
    [MemberData(nameof(Ids))]
    public void A_rule_is_found_by_its_id_in_any_case(string id) => Assert.Equal(id, RuleBook.Find(id.ToLowerInvariant())?.Id);

    [Theory]
    [MemberData(nameof(Ids))]
    public void Its_id_is_well_formed_and_its_title_is_a_heading(string id)
    {
        var rule = RuleBook.Find(id)!;
        Assert.Matches(WellFormed(), rule.Id);
        Assert.DoesNotMatch(@"[.!?:\s]$", rule.Title);
        Assert.True(char.IsUpper(rule.Title[0]));
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void Its_page_begins_with_its_id_and_title_and_names_its_severity(string id)
    {
        var rule = RuleBook.Find(id)!;
        Assert.StartsWith($"# {rule.Id}: {rule.Title}\n\n{RulePage.SummaryOf(rule.Id)}\n", rule.Page, StringComparison.Ordinal);
        Assert.Contains($"\nDefault severity: {rule.Severity.ToString().ToLowerInvariant()}.", rule.Page, StringComparison.Ordinal);
        Assert.Contains($"\ndotnet_diagnostic.{rule.Id}.severity = ", rule.Page, StringComparison.Ordinal);
        Assert.All(["Why it hurts", "Wrong", "Right", "How to fix it", "How to accept it", "Settings"], heading => Assert.Contains($"\n## {heading}\n", rule.Page, StringComparison.Ordinal));
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void Its_page_lies_beside_its_code_in_the_folder_of_its_family(string id)
    {
        var rule = RuleBook.Find(id)!;
        var folder = Path.Combine(RulesFolder(), Families.NameOf(id));
        Assert.True(File.Exists(Path.Combine(folder, rule.GetType().Name + ".cs")), $"{rule.GetType().Name}.cs is not in {folder}.");
        Assert.True(File.Exists(Path.Combine(folder, id + ".md")), $"{id}.md is not in {folder}.");
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void Its_page_says_what_its_fix_does_or_why_it_has_none(string id)
    {
        var rule = RuleBook.Find(id)!;
        Assert.True(rule.Page.Contains("he fix ", StringComparison.Ordinal) == rule.Fix.Length > 0, $"{id} {(rule.Fix.Length > 0 ? "has a fix, and its page doesn't say what it does" : "has no fix, and its page speaks of one")}.");
        Assert.True(rule.Fix.Length > 0 || rule.Page.ReplaceLineEndings(" ").ToUpperInvariant().Contains("NO FIX ", StringComparison.Ordinal), $"{id} has no fix, and its page doesn't say why.");
    }

    private static string RulesFolder()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "Condyle.slnx")))
            folder = folder.Parent;
        return Path.Combine(folder?.FullName ?? throw new DirectoryNotFoundException("Condyle.slnx is in no folder above the tests."), "src", "Condyle", "Rules");
    }

    [GeneratedRegex("^CDY[1-9][0-9]{3}$")]
    private static partial Regex WellFormed();
}
