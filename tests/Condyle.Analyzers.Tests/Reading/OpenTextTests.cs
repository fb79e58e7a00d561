namespace Condyle.Analyzers.Tests.Reading;

/// <summary>Texts that are known in parts, and texts that are compared with known ones.</summary>
public class OpenTextTests
{
    private const string Config = """
        public static class Config
        {
            public static string Word => Environment.MachineName;
            public static int Count => Environment.TickCount;
            public static string[] Words => Environment.GetCommandLineArgs();
        }
        """;

    [Theory]
    [InlineData("text.StartsWith(\"leg\")")]
    [InlineData("!text.StartsWith(\"arm\")")]
    [InlineData("!text.StartsWith(\"arm_\", StringComparison.Ordinal)")]
    [InlineData("!text.StartsWith(\"ARM\", StringComparison.OrdinalIgnoreCase)")]
    [InlineData("!text.EndsWith(\"_left\")")]
    [InlineData("text.EndsWith(\"_right\")")]
    [InlineData("!text.EndsWith('t')")]
    [InlineData("!text.EndsWith(\"_LEFT\", StringComparison.OrdinalIgnoreCase)")]
    [InlineData("text.Length < 9")]
    [InlineData("!(text.Length >= 9)")]
    [InlineData("8 >= text.Length")]
    [InlineData("text.Length == 0")]
    [InlineData("text is { Length: 3 }")]
    [InlineData("!text.Contains(\"arm\")")]
    [InlineData("!text.Contains('_')")]
    [InlineData("text.IndexOf('_') != 3")]
    [InlineData("text.IndexOf(\"rm\", StringComparison.Ordinal) != 1")]
    [InlineData("text == \"leg\"")]
    [InlineData("\"arm_left_\" == text")]
    [InlineData("text is \"leg\" or \"foot\"")]
    [InlineData("text.Equals(\"leg\")")]
    [InlineData("string.Equals(text, \"leg\", StringComparison.Ordinal)")]
    [InlineData("text == $\"leg_{Config.Word}\"")]
    [InlineData("string.IsNullOrWhiteSpace(text)")]
    [InlineData("text[0] != 'a'")]
    public async Task What_the_known_parts_of_a_text_decide_is_known(string never) => Assert.Empty(
        await Findings.In($"var text = $\"arm_{{Config.Word}}_left\"; if ({never}) rig.Group(\"never\");", more: Config));

    [Theory]
    [InlineData("text.StartsWith(\"arm_\")")]
    [InlineData("text.StartsWith(\"arm_l\", StringComparison.Ordinal)")]
    [InlineData("text.EndsWith(\"x_left\", StringComparison.Ordinal)")]
    [InlineData("text.Length < 10")]
    [InlineData("text.Length == 9")]
    [InlineData("text == \"arm__left\"")]
    [InlineData("text.Contains(\"leg\")")]
    [InlineData("text == $\"arm_{Config.Word}\"")]
    [InlineData("text.IndexOf(\"left\", StringComparison.Ordinal) > 5")]
    [InlineData("text.IndexOf('_', 4) == 4")]
    public async Task What_they_do_not_decide_may_be_either(string maybe) => Assert.Equal(
        ["CDY1001 \"either\"", "CDY1001 \"or\""],
        await Findings.In($"var text = $\"arm_{{Config.Word}}_left\"; if ({maybe}) rig.Group(\"either\"); else rig.Group(\"or\");", more: Config));

    [Fact]
    public async Task A_text_that_is_compared_with_a_known_one_is_it_or_is_not() => Assert.Equal(
        ["CDY1001 \"other\"", "CDY1001 \"_part\""],
        await Findings.In(
            """
            var mode = Config.Word;
            var name = mode == "a" ? "a_group" : mode switch { "b" => "b_group", "a" => "never", _ => "other" };
            rig.Group(name);
            if (mode == "a" && name != "a_group") rig.Group("never");
            if (mode == "b") { if (mode == "a" || name == "other") rig.Group("never"); rig.Group(mode + "_part"); }
            """,
            more: Config));

    [Fact]
    public async Task A_text_that_each_turn_has_anew_is_compared_each_time() => Assert.Equal(
        ["CDY1001 \"ok\""],
        await Findings.In("var (a, b) = (0, 0); foreach (var word in Config.Words) { if (word == \"a\") a++; else b++; } if (a == 0 && b == 0) throw new InvalidOperationException(); rig.Group(\"ok\");", more: Config));

    [Theory]
    [InlineData("foreach (var word in Config.Words) { if (System.IO.File.Exists(word)) a++; else b++; }")]
    [InlineData("for (var turn = 0; turn < Config.Count; turn++) { if (System.IO.File.Exists(\"a\" + turn)) a++; else b++; }")]
    [InlineData("foreach (var one in Config.Words.Select(word => new System.IO.FileInfo(word))) { if (one.Exists) a++; else b++; }")]
    [InlineData("foreach (var word in Config.Words) { if (Read() == \"a\") a++; else b++; } static string Read() => Console.ReadLine() ?? \"\";")]
    public async Task What_each_turn_finds_anew_is_not_the_same_for_all(string loop) => Assert.Empty(
        await Findings.In($"var (a, b) = (0, 0); {loop} if (a == 0 || b == 0) throw new InvalidOperationException(); rig.Group(a == 0 ? \"one_group\" : b == 0 ? \"other_group\" : \"both_group\");", more: Config));

    [Theory]
    [InlineData("rig.Group(Config.Count > 3 ? \"arm_group\" : \"leg_group\");")]
    [InlineData("var name = \"arm_group\"; if (Config.Count > 3) name = \"leg_group\"; rig.Group(name);")]
    [InlineData("rig.Group(Config.Count > 3 ? \"arm_grp\" : \"leg_grp\");", "CDY1001 Group(Config.Count > 3 ? \"arm_grp\" : \"leg_grp\")")]
    [InlineData("string? name = Config.Count > 3 ? \"arm\" : null; if (name is null) rig.Group(\"none\"); else rig.Group(\"some\");", "CDY1001 \"none\"", "CDY1001 \"some\"")]
    [InlineData("var name = Config.Count > 3 ? \"aa\" : \"aaa\"; if (name.Length < 2) rig.Group(\"never\"); if (!name.StartsWith(\"aa\", StringComparison.Ordinal)) rig.Group(\"never\");")]
    public async Task What_several_texts_have_in_common_is_known_of_each(string code, params string[] expected) => Assert.Equal(expected, await Findings.In(code, more: Config));
}
