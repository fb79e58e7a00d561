namespace Condyle.Analyzers.Tests.Reading;

/// <summary>What a condition says of something unknown holds in its arm: arms that can't run together aren't read together.</summary>
public class OpenConditionTests
{
    private const string Config = """
        public enum Kind { Ik, Fk, Spline }
        public static class Config
        {
            public static string? Word => Environment.GetEnvironmentVariable("BOAT");
            public static string Sure => Environment.MachineName;
            public static int Count => Environment.TickCount;
            public static Version Version => Environment.Version;
        }
        """;

    [Theory]
    [InlineData("if (t is null) { if (t is { Length: > 3 }) rig.Group(\"never\"); if (t == \"a\" || t is string || t?.Length == 0) rig.Group(\"never\"); }")]
    [InlineData("if (string.IsNullOrEmpty(t)) { if (t is { Length: > 3 }) rig.Group(\"never\"); if (t != null && t.Length > 0) rig.Group(\"never\"); if (t == \"a\") rig.Group(\"never\"); }")]
    [InlineData("if (t == \"a\") { if (t is null || string.IsNullOrEmpty(t) || t.Length > 3 || t.ToUpperInvariant() != \"A\" || t.StartsWith(\"b\")) rig.Group(\"never\"); }")]
    [InlineData("if (t is not null && t.Length > 3) { if (t.Length < 2 || t == \"ab\" || t is null || string.IsNullOrWhiteSpace(t) && t == \"\") rig.Group(\"never\"); }")]
    [InlineData("if (string.IsNullOrEmpty(t)) return; if (t is null || t.Length == 0 || t == \"\") rig.Group(\"never\");")]
    [InlineData("if (s.Length > 5) return; if (s.Length > 7 || s == \"abcdef\") rig.Group(\"never\");")]
    [InlineData("if (s.Length > 5) throw new NotSupportedException(); if (s.Length > 7 || s == \"abcdef\") rig.Group(\"never\");")]
    [InlineData("var u = s + \"_x\"; if (u == \"a_x\") { if (s != \"a\" || u.Length != 3) rig.Group(\"never\"); } if (s == \"b\" && u != \"b_x\") rig.Group(\"never\");")]
    [InlineData("var u = $\"arm_{s}_left\"; if (u.Length > 12) { if (s.Length < 4 || s == \"abc\") rig.Group(\"never\"); }")]
    [InlineData("var u = s.Trim().ToLowerInvariant(); if (s == \" Arm\" && u != \"arm\") rig.Group(\"never\"); if (s.Trim() == \"x\") { if (s.Trim() != \"x\") rig.Group(\"never\"); }")]
    [InlineData("if (s.StartsWith(\"a\")) { if (!s.StartsWith(\"a\")) rig.Group(\"never\"); }")]
    [InlineData("var n = 0; if (t == null) n++; else n += 2; if (n == 0 || t == null && n == 2) rig.Group(\"never\");")]
    [InlineData("if (i > 3) { if (i < 2 || i == 3 || !(i >= 4)) rig.Group(\"never\"); } if (i == 7) { if (i > 9) rig.Group(\"never\"); rig.Group($\"turn{i}_group\"); }")]
    [InlineData("switch (i) { case < 0: if (i >= 0) rig.Group(\"never\"); break; case 3: if (i != 3) rig.Group(\"never\"); break; }")]
    [InlineData("var big = i > 3; if (big) { if (!big || i < 3) rig.Group(\"never\"); } else if (i > 5) rig.Group(\"never\");")]
    [InlineData("var k = i > 3 ? 1 : 2; if (k == 0 || k > 2) rig.Group(\"never\"); if (i > 3) { if (k == 2) rig.Group(\"never\"); }")]
    [InlineData("var kind = i > 3 ? Kind.Ik : Kind.Fk; if (kind == Kind.Spline) rig.Group(\"never\"); if (kind == Kind.Ik) { if (kind == Kind.Fk || kind != Kind.Ik) rig.Group(\"never\"); }")]
    [InlineData("var isBig = false; if (i > 3) isBig = true; if (isBig && i < 3 || !isBig && i > 3) rig.Group(\"never\");")]
    [InlineData("if (v.Build > 2 && v.Minor > 3) { if (v.Build < 1 || v.Minor == 0) rig.Group(\"never\"); }")]
    [InlineData("foreach (var word in Environment.GetCommandLineArgs()) { if (word.Length > 3) { if (word.Length < 2 || word == \"ab\") rig.Group(\"never\"); } }")]
    public async Task An_arm_that_can_not_run_says_nothing(string code) => Assert.Empty(await Findings.In(Unknowns + code, more: Config));

    [Theory]
    [InlineData("if (t is null) { if (string.IsNullOrEmpty(t)) rig.Group(\"a\"); } else if (t.Length > 3) rig.Group(\"b\");", "a", "b")]
    [InlineData("if (s.Length > 3) { if (s.Length > 5) rig.Group(\"a\"); else rig.Group(\"b\"); }", "a", "b")]
    [InlineData("if (s.Length > 5) return; if (s.Length > 3 || s == \"abc\") rig.Group(\"a\");", "a")]
    [InlineData("var u = s + \"_x\"; if (u == \"a_x\") { if (s == \"a\") rig.Group(\"a\"); } else if (s.Length > 3) rig.Group(\"b\");", "a", "b")]
    [InlineData("if (s.StartsWith(\"a\")) { if (s.EndsWith(\"b\")) rig.Group(\"a\"); }", "a")]
    [InlineData("if (i > 3) { if (i < 5) rig.Group(\"a\"); if (i != 4) rig.Group(\"b\"); } if (i == 7) rig.Group($\"turn{i}\");", "a", "b", "turn{i}")]
    [InlineData("if (i > 3 || s.Length > 2) { if (i < 3) rig.Group(\"a\"); if (s.Length < 2) rig.Group(\"b\"); }", "a", "b")]
    [InlineData("var k = i > 3 ? 1 : 2; if (k == 1) rig.Group(\"a\"); if (i < 3 && k == 2) rig.Group(\"b\");", "a", "b")]
    [InlineData("rig.Group(t ?? \"plain\");", "plain")]
    [InlineData("rig.Group(string.IsNullOrWhiteSpace(t) ? \"plain\" : t + \"_group\");", "plain")]
    [InlineData("i = i > 3 ? 7 : i; if (i > 3) rig.Group(\"a\"); if (i < 3) rig.Group(\"b\");", "a", "b")]
    [InlineData("foreach (var word in Environment.GetCommandLineArgs()) { if (word.Length > 3) { if (word == \"abcd\") rig.Group(\"a\"); } else if (word is \"ab\") rig.Group(\"b\"); }", "a", "b")]
    [InlineData("var words = Environment.GetCommandLineArgs(); var before = string.Join(\"_\", words); words[0] = s; if (string.Join(\"_\", words) != before) rig.Group(\"a\");", "a")]
    public async Task An_arm_that_can_run_is_read(string code, params string[] names) =>
        Assert.Equal(names.Select(name => name.Contains('{') ? $"CDY1001 $\"{name}\"" : $"CDY1001 \"{name}\""), await Findings.In(Unknowns + code, more: Config));

    /// <summary>A structure that is one of two is so part by part, and what a text was tried to be read as is a truth like any other.</summary>
    [Theory]
    [InlineData("var o = i > 3 ? new Shape(1, true) : new Shape(3, true); if (!o.IsRound || o.Sides > 3 || o.Sides == 0) rig.Group(\"never\"); rig.Group(\"a\");", "a")]
    [InlineData("var (name, sides) = i > 3 ? (\"a\", 1) : (\"a\", 2); if (sides == 0) rig.Group(\"never\"); rig.Group(name);", "a")]
    [InlineData("var o = new Shape(5, true); if (i > 3) o = new Shape(7, true); if (!o.IsRound || o.Sides < 5) rig.Group(\"never\"); rig.Group(\"a\");", "a")]
    [InlineData("Shape o; if (i > 3) o = new Shape(7, true); else throw new NotSupportedException(); if (!o.IsRound || o.Sides != 7) rig.Group(\"never\"); rig.Group(\"a\");", "a")]
    [InlineData("Shape o; if (i < 3) throw new NotSupportedException(); else o = new Shape(7, true); if (!o.IsRound || o.Sides != 7) rig.Group(\"never\"); rig.Group(\"a\");", "a")]
    [InlineData("var o = bool.TryParse(t, out var isPlain) && isPlain ? new Shape(1, true) : new Shape(3, true); if (isPlain != isPlain || o.Sides > 3) rig.Group(\"never\"); if (!isPlain && o.Sides != 3) rig.Group(\"never\"); rig.Group(\"a\");", "a")]
    [InlineData("var o = new Shape(5, true); if (i > 3) o = new Shape(5, false); if (o.IsRound) rig.Group(\"a\"); else rig.Group(\"b\"); o.Turn(i > 3 ? 1 : 1); if (o.Sides != 6) rig.Group(\"never\");", "a", "b")]
    public async Task A_structure_that_is_one_of_two_is_known_in_what_they_share(string code, params string[] names) => Assert.Equal(
        names.Select(name => $"CDY1001 \"{name}\""),
        (await Findings.In(Unknowns + code, more: Config + "public record struct Shape(int Sides, bool IsRound) { public void Turn(int by) => Sides += by; }")).Where(found => !found.Contains("name", StringComparison.Ordinal)));

    /// <summary>Arms of one text that exclude each other say nothing of the same rig, in whichever order they come.</summary>
    [Theory]
    [InlineData("if (s.StartsWith(\"arm\")) rig.Control(\"hook\"); if (s == \"leg\") rig.Control(\"hook\");")]
    [InlineData("if (t is null) rig.Control(\"hook\"); if (t == \"leg\") rig.Control(\"hook\");")]
    [InlineData("if (t == \"leg\") rig.Control(\"hook\"); if (t is null) rig.Control(\"hook\");")]
    [InlineData("if (s == \"leg\") rig.Control(\"hook\"); if (s.StartsWith(\"arm\")) rig.Control(\"hook\");")]
    [InlineData("var u = s.ToLowerInvariant(); if (s == \"LEG\") rig.Control(\"hook\"); if (u == \"arm\") rig.Control(\"hook\");")]
    [InlineData("if (s.Length > 3) rig.Control(\"hook\"); else rig.Control(\"hook\"); if (s == \"leg\") rig.Control(\"pole\"); else rig.Control(\"pole\");")]
    public async Task What_excludes_each_other_is_no_namesake(string code) => Assert.DoesNotContain(await All(code), id => id == "CDY1002");

    [Theory]
    [InlineData("if (s.StartsWith(\"arm\")) { rig.Control(\"hook\"); if (s.StartsWith(\"arm\")) rig.Control(\"hook\"); }")]
    [InlineData("if (t == \"leg\") rig.Control(\"hook\"); if (t is not null) rig.Control(\"hook\");")]
    [InlineData("if (i > 3) { rig.Control(\"hook\"); if (i > 2) rig.Control(\"hook\"); }")]
    [InlineData("if (t is null) rig.Control(\"hook\"); rig.Control(\"hook\");")]
    public async Task What_goes_together_is(string code) => Assert.Contains(await All(code), id => id == "CDY1002");

    private const string Unknowns = "var t = Config.Word; var s = Config.Sure; var i = Config.Count; var v = Config.Version;\n";

    private static async Task<IEnumerable<string>> All(string code) =>
        (await Findings.Diagnostics(Condyle.Tests.Shared.CompiledCode.Compile(("rig.cs", Oracle.Rig(Unknowns + code)), ("more.cs", Oracle.Usings + Config)))).Select(found => found.Id);
}
