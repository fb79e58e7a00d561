using Condyle.Analyzers.Tests.Reporting;

namespace Condyle.CodeFixes.Tests;

/// <summary>Which way code goes may change with a text that it looks at, wherever that stands: it is left as it is written.</summary>
public class TextsLookedAtTests
{
    [Theory]
    [InlineData("new[] { part, \"arm_group\" }.Distinct().Count() == 2")]
    [InlineData("new[] { part, \"arm_group\" }.GroupBy(name => name).Count() == 2")]
    [InlineData("new[] { part }.Union([\"arm_group\"]).Count() == 2")]
    [InlineData("!new[] { part }.SequenceEqual([\"arm_group\"])")]
    [InlineData("!new[] { part }.Contains(\"arm_group\")")]
    [InlineData("!new[] { part }.ToDictionary(name => name).ContainsKey(\"arm_group\")")]
    [InlineData("new HashSet<string>([part, \"arm_group\"], StringComparer.Ordinal).Count == 2")]
    [InlineData("!Equals(part, \"arm_group\")")]
    [InlineData("part.All(letter => letter != '_')")]
    [InlineData("(part, 1) != (\"arm_group\", 1)")]
    [InlineData("new Row(part) != new Row(\"arm_group\")")]
    public Task The_suffix_is_appended_where_it_is_used(string look) => Repairs.Give(
        new RigSnippet($"var part = \"arm\";\nrig.Group({{|CDY1001:part|}});\nif ({look}) rig.Control(\"hand\");", Members: "private sealed record Row(string Name);"),
        new RigSnippet($"var part = \"arm\";\nrig.Group(part + \"_group\");\nif ({look}) rig.Control(\"hand\");", Members: "private sealed record Row(string Name);"));

    [Theory]
    [InlineData("(Name: \"leg\", At: 1)", "(\"foot\", 1)", "(\"arm_group\", 1)")]
    [InlineData("new Row(\"leg\")", "new Row(\"foot\")", "new Row(\"arm_group\")")]
    public Task What_was_looked_at_may_hold_another_text_the_next_time(string row, string first, string second)
    {
        return Repairs.Give(Snippet("{|CDY1001:part|}"), Snippet("part + \"_group\""));

        RigSnippet Snippet(string name) => new(
            $"var part = \"arm\";\nvar row = {row};\nif (row == {first}) rig.Control(\"foot\");\nrow.Name = part;\nrig.Group({name});\nif (row != {second}) rig.Control(\"hand\");",
            Members: "private record struct Row(string Name);");
    }

    [Theory]
    [InlineData("arm.Name == \"arm\"")]
    [InlineData("$\"{arm}\" == \"arm\"")]
    [InlineData("((Node)arm).Name.Length == 3")]
    [InlineData("arm.Name switch { \"arm\" => true, _ => false }")]
    [InlineData("arm.Name is \"arm\"")]
    [InlineData("new Dictionary<string, Group> { [arm.Name] = arm }.ContainsKey(\"arm\")")]
    [InlineData("new[] { arm }.Any(group => $\"{group.Name}_left\".StartsWith(\"arm_l\", StringComparison.Ordinal))")]
    [InlineData("new[] { arm, rig.Group(\"a_group\") }.OrderBy(group => group.Name, StringComparer.Ordinal).First() == arm")]
    [InlineData("rig.Control($\"{arm.Name}_root\").Name.Length > 0")] // which goes by it
    public async Task A_name_that_code_asks_for_is_left_alone(string look)
    {
        await Repairs.AreNotOffered(new RigSnippet($"var arm = rig.{{|CDY1001:Group(\"arm\")|}};\nif ({look}) rig.Control(\"hand\");"));
        await Repairs.AreNotOffered(new RigSnippet($"var part = \"arm\";\nrig.Control(part);\nvar arm = rig.{{|CDY1001:Group(part)|}};\nif ({look}) rig.Control(\"hand\");"));
    }

    [Fact]
    public Task Names_of_others_may_be_asked_for() => Repairs.Give(
        new RigSnippet("var leg = rig.Group(\"leg_group\");\nvar arm = rig.Group({|CDY1001:\"arm\"|});\nif (leg.Name == \"leg_group\") rig.Control(\"hand\").Under(arm);"),
        new RigSnippet("var leg = rig.Group(\"leg_group\");\nvar arm = rig.Group(\"arm_group\");\nif (leg.Name == \"leg_group\") rig.Control(\"hand\").Under(arm);"));

    [Fact]
    public Task A_helper_names_one_that_is_asked_for_and_one_that_is_not() => Repairs.Give(
        new RigSnippet("var arm = Parts(rig, {|CDY1001:\"arm\"|});\nvar leg = Parts(rig, \"leg_group\");\nif (leg.Name == \"leg_group\") rig.Control(\"hand\").Under(arm);", "private static Group Parts(RigDraft rig, string name) => rig.Group(name);"),
        new RigSnippet("var arm = Parts(rig, \"arm_group\");\nvar leg = Parts(rig, \"leg_group\");\nif (leg.Name == \"leg_group\") rig.Control(\"hand\").Under(arm);", "private static Group Parts(RigDraft rig, string name) => rig.Group(name);"));

    [Fact]
    public Task What_was_never_made_is_asked_for_no_name() => Repairs.Give(
        "rig.Group({|CDY1001:\"arm\"|});\nif (default(Label).ToString().Length > 0) rig.Control(\"hand\");",
        "rig.Group(\"arm_group\");\nif (default(Label).ToString().Length > 0) rig.Control(\"hand\");");
}
