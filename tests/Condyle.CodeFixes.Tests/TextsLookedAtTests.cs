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
}
