namespace Condyle.Analyzers.Tests.Reading;

/// <summary>What was just put into a collection of which nobody knows what else it holds is there, until something may have taken it out.</summary>
public class SureKeyTests
{
    private const string Members = """
        private static string Word => Environment.MachineName;
        private static Dictionary<string, string> Map() { var map = new Dictionary<string, string>(); foreach (var word in Environment.GetCommandLineArgs()) map[word] = word; return map; }
        private static HashSet<string> Set() { var set = new HashSet<string>(); foreach (var word in Environment.GetCommandLineArgs()) set.Add(word); return set; }
        """;

    [Theory]
    [InlineData("var map = Map(); map[\"a\"] = \"a\"; if (!map.ContainsKey(\"a\")) rig.Group(\"never\"); rig.Group(map[\"a\"] + \"_group\");")]
    [InlineData("var map = Map(); map.Add(\"a\", \"a_group\"); if (!map.TryGetValue(\"a\", out var found)) rig.Group(\"never\"); rig.Group(found!);")]
    [InlineData("var map = Map(); map.TryAdd(\"a\", \"a\"); if (!map.ContainsKey(\"a\")) rig.Group(\"never\"); rig.Group(map[\"a\"]);")]
    [InlineData("var set = Set(); set.Add(\"a\"); if (!set.Contains(\"a\")) rig.Group(\"never\");")]
    [InlineData("var word = Word; var map = new Dictionary<string, string>(); map[word] = \"a\"; if (!map.ContainsKey(word)) rig.Group(\"never\");")]
    [InlineData("var map = Map(); map[\"a\"] = \"a\"; map[Word] = \"x_group\"; rig.Group(map[\"a\"]); if (!map.ContainsKey(\"a\")) rig.Group(\"never\");")]
    [InlineData("var map = Map(); map[\"a\"] = \"a\"; System.Text.Json.JsonSerializer.Serialize(map); rig.Group(map[\"a\"]);")]
    [InlineData("var map = Map(); if (Environment.TickCount > 3) map[\"a\"] = \"a\"; else map[\"a\"] = \"b\"; rig.Group(map[\"a\"]);")]
    [InlineData("var map = Map(); map[\"a\"] = \"a\"; if (Environment.TickCount > 3) map.Remove(\"a\"); rig.Group(map.GetValueOrDefault(\"a\") ?? \"b_group\");")]
    [InlineData("var map = Map(); map[\"a\"] = \"a\"; foreach (var word in Environment.GetCommandLineArgs()) map.Remove(word); rig.Group(map.GetValueOrDefault(\"a\") ?? \"b_group\");")]
    [InlineData("var (one, other) = (Map(), Map()); one[\"a\"] = \"a\"; (Environment.TickCount > 3 ? one : other)[\"a\"] = \"x_group\"; rig.Group(one[\"a\"]);")]
    public async Task What_can_not_be_or_is_not_known_is_not_said(string code) => Assert.DoesNotContain(await Findings.In(code, Members), finding => !finding.StartsWith("CDY9002", StringComparison.Ordinal));

    [Theory]
    [InlineData("var map = Map(); map[\"a\"] = \"a\"; map[\"b\"] = \"b\"; rig.Group(map[\"a\"]);", "CDY1001 \"a\"")]
    [InlineData("var map = Map(); map[\"a\"] = \"a\"; map.Remove(\"a\"); if (map.ContainsKey(\"a\")) rig.Group(\"there\"); else rig.Group(\"gone\");", "CDY1001 \"there\"", "CDY1001 \"gone\"")]
    [InlineData("var set = Set(); set.Add(\"a\"); set.ExceptWith(Environment.GetCommandLineArgs()); if (set.Contains(\"a\")) rig.Group(\"there\"); else rig.Group(\"gone\");", "CDY1001 \"there\"", "CDY1001 \"gone\"")]
    public async Task What_is_known_is_said(string code, params string[] expected) => Assert.Equal(expected, await Findings.In(code, Members));
}
