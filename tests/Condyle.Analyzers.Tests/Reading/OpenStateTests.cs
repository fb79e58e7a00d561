using Condyle.Analyzers.Tests.Reporting;

namespace Condyle.Analyzers.Tests.Reading;

/// <summary>What isn't known because somebody else may have set or changed it: a clean rig stays silent, and what nobody changes stays known.</summary>
public class OpenStateTests
{
    private const string Unknown = """
        public sealed class Settings
        {
            public bool On { get; set; }
            public bool Other { get; set; }
            public Kind Kind { get; set; }
            public void Flip() => On = !On;
            public static Settings Load() => System.Text.Json.JsonSerializer.Deserialize<Settings>(Environment.GetEnvironmentVariable("SETTINGS") ?? "{}")!;
        }
        public enum Kind { None, Arm, Leg }
        [Flags] public enum Parts { None, Arm = 1, Leg = 2 }
        public interface IFeed { bool Next(); bool IsOpen { get; } }
        """;

    [Theory]
    [InlineData("var suffix = \"\"; if (!s.On) s.On = true; if (s.On) suffix = \"_group\"; rig.Group(\"arm\" + suffix);")]
    [InlineData("if (s.On) throw new InvalidOperationException(); s.On = true; if (!s.On) throw new InvalidOperationException(); rig.Control(\"a\");")]
    [InlineData("if (s.On) throw new InvalidOperationException(); s.Flip(); if (!s.On) throw new InvalidOperationException();")]
    [InlineData("if (s.On) throw new InvalidOperationException(); void Set(ref bool on) => on = true; var t = new List<Settings> { s }; t[0].On = true; if (!s.On) throw new InvalidOperationException();")]
    [InlineData("if (s.On) throw new InvalidOperationException(); typeof(Settings).GetProperty(\"On\")!.SetValue(s, true); if (!s.On) throw new InvalidOperationException();")]
    [InlineData("using var r = new System.IO.StreamReader(\"parts\"); if (r.EndOfStream) throw new InvalidOperationException(); r.ReadToEnd(); if (!r.EndOfStream) throw new InvalidOperationException();")]
    [InlineData("var feed = (IFeed)AppContext.GetData(\"feed\")!; if (feed.Next()) throw new InvalidOperationException(); if (!feed.Next()) throw new InvalidOperationException();")]
    [InlineData("var p = Enum.Parse<Parts>(Environment.GetEnvironmentVariable(\"PARTS\")!); if ((p & Parts.Arm) == 0) throw new InvalidOperationException(); if ((p & Parts.Leg) == 0) throw new InvalidOperationException();")]
    [InlineData("object o = int.TryParse(Environment.GetEnvironmentVariable(\"A\"), out var i) ? i : \"text\"; try { _ = (string)o; throw new NotSupportedException(); } catch (InvalidCastException) { }")]
    [InlineData("var q = new Queue<string>(Environment.GetCommandLineArgs()); var name = \"\"; try { q.Dequeue(); } catch (InvalidOperationException) { name = \"_group\"; } if (name == \"\") throw new InvalidOperationException(); rig.Group(\"arm\" + name);")]
    [InlineData("int? v = int.TryParse(Environment.GetEnvironmentVariable(\"A\"), out var n) ? n : null; try { _ = v.Value; throw new NotSupportedException(); } catch (InvalidOperationException) { }")]
    [InlineData("rig.Group(typeof(int?).Name == \"int?\" ? \"wrong\" : \"right_group\");")]
    [InlineData("rig.Group(ReferenceEquals(\"ab\", \"a\" + \"b\") ? \"same_group\" : \"other\");")]
    [InlineData("if (new DateTime(2024, 3, 5).DayOfWeek == DayOfWeek.Sunday) rig.Group(\"x\"); else rig.Group(\"x_group\");")]
    public async Task What_may_have_changed_is_not_taken_for_what_it_was(string code) => Assert.DoesNotContain(
        await Findings.In("var s = Settings.Load(); " + code, "", Unknown),
        finding => finding.StartsWith("CDY9001", StringComparison.Ordinal) || finding is "CDY1001 \"arm\" + suffix" or "CDY1001 \"arm\"" or "CDY1001 \"wrong\"" or "CDY1001 \"other\"");

    [Fact]
    public async Task A_member_that_nothing_changed_is_the_same_each_time() => Assert.Empty(await Findings.In(
        "var s = Settings.Load(); var suffix = \"\"; if (s.On) suffix = \"_group\"; s.Other = true; Console.WriteLine(suffix); if (s.On) rig.Group(\"arm\" + suffix);", "", Unknown));

    [Fact]
    public async Task Values_of_an_enum_with_flags_are_not_tried_one_by_one() => Assert.Equal(
        ["CDY1001 \"arm\"", "CDY1001 \"leg\""],
        await Findings.In("var p = Enum.Parse<Parts>(Environment.GetEnvironmentVariable(\"PARTS\")!); if (p.HasFlag(Parts.Arm)) { rig.Group(\"arm\"); if (p.HasFlag(Parts.Leg)) rig.Group(\"leg\"); }", "", Unknown));

    [Theory]
    [InlineData("new Docker { Suffix = \"_group\", Parts = [\"a\"] }")]
    [InlineData("new Docker { Suffix = Environment.MachineName, Parts = null }")]
    public async Task What_whoever_builds_the_rig_sets_is_not_known(string made) => Assert.Empty(await FrontEnds.Read([
        .. new RigSnippet("rig.Group(\"arm\" + Suffix); if (Parts is null) throw new InvalidOperationException(\"Set the parts.\");", "public string Suffix { get; init; } = \"\"; public IReadOnlyList<string>? Parts { get; set; }").PlainFiles,
        ("/0/program.cs", $"internal static class Builds {{ public static Rig One() => Rig.Examine({made}); }}"),
    ]));

    [Fact]
    public async Task What_the_program_sets_before_is_not_known() => Assert.Empty(await FrontEnds.Read([
        .. new RigSnippet("rig.Group(\"arm\" + Naming.Suffix); if (Naming.Current is null) throw new InvalidOperationException(\"Set it.\");", More: "internal static class Naming { public static string Suffix = \"\"; public static string? Current { get; set; } }").PlainFiles,
        ("/0/program.cs", "internal static class Builds { public static void One() { Naming.Suffix = \"_group\"; Naming.Current = \"a\"; Rig.Examine(new Docker()); } }"),
    ]));

    [Fact]
    public async Task What_nobody_else_sets_is_known()
    {
        var finding = Assert.Single(await FrontEnds.Read([
            .. new RigSnippet("rig.Group(\"arm\" + Suffix + count++ + Naming.Suffix);", "public string Suffix { get; init; } = \"_\"; private static int count;", More: "internal static class Naming { public static string Suffix = \"\"; }").PlainFiles,
            ("/0/program.cs", "internal static class Builds { public static void One(string suffix) { suffix = \"_group\"; Rig.Examine(new Docker()); } }"),
            ("/0/other.cs", "internal static class Other { public static void Two() { Naming.Suffix = \"_group\"; System.Threading.Tasks.Task.Run(Two); } }"),
        ]));
        Assert.Contains("'arm_0'", finding.GetMessage(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("new System.Threading.Thread(() => Other.Name = \"b_group\").Start();")]
    [InlineData("System.Threading.Tasks.Parallel.For(0, 3, i => Other.Name = \"b_group\");")]
    [InlineData("void Set(object? _) { Other.Name = \"b_group\"; System.Threading.ThreadPool.QueueUserWorkItem(Set); } System.Threading.ThreadPool.QueueUserWorkItem(Set);")]
    [InlineData("System.Threading.ThreadPool.QueueUserWorkItem(_ => System.Threading.ThreadPool.QueueUserWorkItem(_ => Other.Name = \"b_group\"));")]
    public async Task What_a_function_sets_that_is_handed_away_is_not_known(string code)
    {
        var found = await FrontEnds.Read(new RigSnippet("_ = Other.Kept; " + code + " rig.Group(Other.Name); rig.Group(Other.Kept);", More: "internal static class Other { public static string Name = \"a\"; public static string Kept = \"kept\"; }").PlainFiles);
        Assert.Equal(["Other.Kept"], found.Where(finding => finding.Id == "CDY1001").Select(finding => finding.Location.SourceTree!.GetText().ToString(finding.Location.SourceSpan)));
        Assert.All(found, finding => Assert.True(finding.Id is "CDY1001" or "CDY9002", finding.GetMessage()));
        Assert.DoesNotContain(found, finding => finding.GetMessage().Contains("the reader failed", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("if (Environment.TickCount > 3) rig.Group(Told.Kept + \"_x\"); else rig.Group(Told.Kept + \"_group\"); rig.Group(Told.Kept);", "\"_x\"", "Told.Kept")]
    [InlineData("foreach (var word in Environment.GetCommandLineArgs()) rig.Group($\"{Told.Kept}_{word}_group\"); rig.Group(Told.Kept);", "Told.Kept")]
    [InlineData("if (Environment.TickCount > 3) { _ = Told.Names; } else if (Told.Names.Count == 0) throw new InvalidOperationException(); rig.Group(Told.Names[0].Text);", "\"a\"")]
    [InlineData("if (Environment.TickCount > 3) { _ = Counting.First; } rig.Group(Told.Made == 0 ? \"never\" : \"a_group\"); _ = Counting.First; rig.Group(Told.Made == 1 ? \"once_group\" : \"b_group\");")]
    public async Task What_initialisers_make_is_there_whichever_way_is_first(string code, params string[] flagged) => Assert.Equal(
        flagged.Select(at => $"CDY1001 {at}"),
        await Findings.In(code, more: """
        public static class Told { public static int Made; public static readonly string Kept = "kept"; public static readonly List<Word> Names = [new() { Text = "a" }, new() { Text = "b" }]; }
        public sealed class Word { public string Text { get; set; } = ""; }
        public static class Counting { public static readonly int First = ++Told.Made; }
        """));

    [Theory]
    [InlineData("var one = Environment.TickCount > 3 ? a : b; one.Text = \"x_group\";")]
    [InlineData("var one = a; if (Environment.TickCount > 3) one = b; one.Text = \"x_group\";")]
    [InlineData("var some = new List<Word> { a }; if (Environment.TickCount > 3) { some.Clear(); some.Add(b); } some[0].Text = \"x_group\";")]
    public async Task Of_equal_records_it_is_not_known_which_one_is_meant(string code) => Assert.Empty(
        await Findings.In($"var (a, b) = (new Word(\"a\"), new Word(\"a\")); {code} rig.Group(a.Text); rig.Group(b.Text);", more: "public sealed record Word(string Text) { public string Text { get; set; } = Text; }"));
}
