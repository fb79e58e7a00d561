namespace Condyle.Analyzers.Tests.Reading.Framework;

/// <summary>Framework calls with something unknown: what they answer is open, what they change is open afterwards, and the rest goes on.</summary>
public class OpenAnswerTests
{
    private const string Config = """
        public static class Config
        {
            public static int Count => Environment.TickCount;
            public static string Word => Environment.MachineName;
            public static string[] Words => Environment.GetCommandLineArgs();
            public static List<string> List => new(Environment.GetCommandLineArgs());
        }
        """;

    [Theory]
    [InlineData("""var l = new List<string> { "crate", "hook" }; rig.Group(l[Config.Count]);""")]
    [InlineData("""var l = new List<string> { "crate_group", "hook" }; l.RemoveAt(Config.Count); rig.Group(l[0]);""")]
    [InlineData("""var l = new List<string> { "crate" }; l.RemoveAll(x => x.Length > Config.Count); if (l.Count == 1) rig.Group(l[0] + "_group");""")]
    [InlineData("""var m = new Dictionary<string, string> { ["a"] = "crate" }; m[Config.Word] = "x_group"; rig.Group(m["a"]);""")]
    [InlineData("""var s = new HashSet<string> { "crate" }; s.Add(Config.Word); foreach (var x in s) rig.Group(x);""")]
    [InlineData("""var l = Config.List; l.Add("crate"); rig.Group(l[0]);""")]
    [InlineData("""var a = new[] { "crate", "hook" }; Array.Sort(a); rig.Group(a[0]);""")]
    [InlineData("""foreach (var x in new[] { "crate", "hook" }.Order()) rig.Group(x);""")]
    [InlineData("""rig.Group(new[] { "crate", "hook" }.Max()!);""")]
    [InlineData("""var l = new SortedSet<string> { "crate", "hook" }; rig.Group(l.Min!);""")]
    [InlineData("""rig.Group("crate".Replace(Config.Word, "")); rig.Group("crate".Substring(Config.Count)); rig.Group(1.5.ToString()); rig.Group("i".ToUpper()); rig.Group(string.Format("{0}", Config.Word));""")]
    [InlineData("""var h = new HashSet<string> { "crate", "hook" }.ToFrozenSet(); foreach (var x in h) rig.Group(x);""")]
    [InlineData("""var q = new Queue<string>(Config.Words); q.Enqueue("crate"); rig.Group(q.Dequeue());""")]
    [InlineData("""var b = new StringBuilder("crate"); b.AppendLine(); rig.Group(b.ToString()); b.Remove(0, Config.Count); rig.Group(b + "");""")]
    public async Task What_is_not_known_gives_no_finding(string code) => Assert.DoesNotContain(await In(code), finding => !finding.StartsWith("CDY9002", StringComparison.Ordinal));

    [Theory]
    [InlineData("""foreach (var name in Config.Words.Select(word => word + "_grp")) rig.Group(name);""", "\"_grp\"")]
    [InlineData("""var made = Config.Words.Where(word => word.Length > 3).Select(word => rig.Group($"{word}_part")).ToList();""", "$\"{word}_part\"")]
    [InlineData("""Config.List.ForEach(word => rig.Group("part"));""", "\"part\"")]
    [InlineData("""foreach (var (word, at) in Config.Words.OrderBy(word => word).Select((word, at) => (word, at))) rig.Group($"{at}_{word}_part");""", "$\"{at}_{word}_part\"")]
    [InlineData("""var n = Config.Words.Sum(word => { rig.Group("part"); return word.Length; });""", "\"part\"")]
    [InlineData("""foreach (var x in new[] { "b", "a" }.OrderBy(x => x)) rig.Group(x + "_part");""", "\"_part\"")]
    [InlineData("""var l = Config.List; l.Clear(); l.Add("crate"); rig.Group(l[0]);""", "\"crate\"")]
    [InlineData("""var b = new StringBuilder(Config.Word); b.Append("_grp"); rig.Group(b.ToString());""", "\"_grp\"")]
    [InlineData("""var name = $"{Config.Word}_grp"; if (name.EndsWith("_grp", StringComparison.Ordinal)) rig.Group("crate");""", "\"crate\"")]
    [InlineData("""var all = string.Join("_", Config.Words.Concat(["grp"])); rig.Group("crate");""", "\"crate\"")]
    public async Task What_holds_whatever_is_unknown_is_found(string code, string at) => Assert.Equal([$"CDY1001 {at}"], await In(code));

    [Theory]
    [InlineData("""var name = "crate"; Config.List.ForEach(word => name = word + "_group"); rig.Group(name);""")]
    [InlineData("""var name = "crate"; var lazy = Config.Words.Select(word => { name = "x_group"; return word; }); name = "crate"; lazy.ToList(); rig.Group(name);""")]
    [InlineData("""var name = "crate"; foreach (var word in Config.Words.Select(word => { name = "x_group"; return word; })) { } rig.Group(name);""")]
    [InlineData("""var name = "crate"; var any = Config.Words.Any(word => { name = "x_group"; return word.Length > 2; }); rig.Group(name);""")]
    [InlineData("""var names = new List<string> { "crate_group" }; var copies = Config.Words.Select(word => { names.Add(word); return word; }).ToArray(); rig.Group(names[^1]);""")]
    public async Task What_functions_write_an_unknown_number_of_times_is_open_afterwards(string code) => Assert.Equal([], await In(code));

    [Fact]
    public async Task A_query_that_was_never_enumerated_did_nothing() => Assert.Equal(
        ["CDY1001 \"crate\""],
        await In("""var name = "crate"; var lazy = Config.Words.Select(word => { name = "x_group"; return word; }); rig.Group(name);"""));

    private static Task<IReadOnlyList<string>> In(string code) => Findings.InFiles(
        ("rig.cs", "using System.Collections.Frozen; using System.Text;\n" + Oracle.Rig(code)),
        ("config.cs", Oracle.Usings + Config));
}
