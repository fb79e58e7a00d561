using Condyle.Analyzers.Tests.Skeletons;
using Condyle.Rules;

namespace Condyle.Analyzers.Tests.Reporting;

/// <summary>The table of rules on the page of rules is the one that the rule book makes.</summary>
public class RuleTableTests
{
    private const string Head = "| rule | what is flagged | severity | fix | from |\n|---|---|---|---|---|\n";

    [Fact]
    public void The_page_of_rules_has_every_rule_as_the_rule_book_has_it()
    {
        var table = Head + string.Concat(RuleBook.All.OrderBy(rule => rule.Id, StringComparer.Ordinal).Select(Row));
        Assert.True(
            File.ReadAllText(Repository.PathTo("docs", "rules.md")).ReplaceLineEndings("\n").Contains(table + "\n", StringComparison.Ordinal),
            $"The table of rules in docs/rules.md should be:{Environment.NewLine}{table}");
    }

    [Theory]
    [MemberData(nameof(RulePageTests.Ids), MemberType = typeof(RulePageTests))]
    public void Every_rule_has_a_case(string id)
    {
        var cases = Directory.GetFiles(Repository.PathTo("tests", "Condyle.Analyzers.Tests", "Corpus", "Slips"), $"{id}_*.cs").Length;
        Assert.True(cases > 0 || RigSnippet.Rules.Contains(id), $"There is no case of {id} in the corpus.");
    }

    private static string Row(Rule rule)
    {
        var page = Directory.GetFiles(Repository.PathTo("src", "Condyle", "Rules"), rule.Id + ".md", SearchOption.AllDirectories).Single();
        var path = Path.GetRelativePath(Repository.PathTo("docs"), page).Replace('\\', '/');
        return $"| [{rule.Id}]({path}) | {rule.Title} | {rule.Severity.ToString().ToLowerInvariant()} | {rule.Fix} | {rule.Source} |\n";
    }
}
