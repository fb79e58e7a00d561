using System.Xml.Linq;
using Condyle.Analyzers.Tests.Skeletons;
using Condyle.Naming;

namespace Condyle.Analyzers.Tests.Reporting;

/// <summary>A team's settings are told of, handed on and taken alike: on the page of settings, in the build's file and in the attribute.</summary>
public class SettingTableTests
{
    private const string Head = "| property | when not set | what it sets | values |\n|---|---|---|---|\n";

    [Fact]
    public void The_page_of_settings_has_every_setting_as_the_code_has_it()
    {
        var table = Head + string.Concat(TeamSetting.All.Select(Row));
        Assert.True(
            File.ReadAllText(Repository.PathTo("docs", "settings.md")).ReplaceLineEndings("\n").Contains(table + "\n", StringComparison.Ordinal),
            $"The table of settings in docs/settings.md should be:{Environment.NewLine}{table}");
    }

    [Fact]
    public void The_page_of_settings_says_what_patterns_are_made_of() =>
        Assert.Contains(NamePattern.Signs.Replace('\'', '`'), File.ReadAllText(Repository.PathTo("docs", "settings.md")), StringComparison.Ordinal);

    [Fact]
    public void A_build_hands_every_setting_on()
    {
        var attribute = XDocument.Load(Repository.PathTo("src", "Condyle", "build", "Condyle.props")).Descendants("AssemblyAttribute").First();
        Assert.Equal(
            TeamSetting.All.Select(setting => (setting.Name, $"$({setting.Property})")),
            attribute.Attributes().Where(given => given.Name != "Include").Select(given => (given.Name.LocalName, given.Value)));
        Assert.All(TeamSetting.All, setting => Assert.Contains($"$({setting.Property})", attribute.Parent!.Attribute("Condition")!.Value, StringComparison.Ordinal));
        Assert.All(TeamSetting.All, setting => Assert.Contains($"$({setting.Property})", attribute.Parent!.Descendants("_Parameter2").Single().Value, StringComparison.Ordinal));
    }

    [Fact]
    public void The_attribute_takes_every_setting() => Assert.Equal(
        TeamSetting.All.Select(setting => setting.Name).Order(),
        typeof(RigConventionsAttribute).GetProperties().Where(property => property.CanWrite).Select(property => property.Name).Order());

    private static string Row(TeamSetting setting) =>
        $"| `{setting.Property}` | {(setting.Default.Length > 0 ? $"`{setting.Default}`" : "")} | {setting.Sets} | {setting.Right.Replace('\'', '`')} |\n";
}
