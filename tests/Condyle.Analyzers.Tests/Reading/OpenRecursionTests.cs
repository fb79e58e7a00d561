namespace Condyle.Analyzers.Tests.Reading;

/// <summary>Functions that call themselves, nobody knows how often: the rig is read whole, and what any of the calls may have changed isn't known.</summary>
public class OpenRecursionTests
{
    private const string Members = """
        private static int Turns => Environment.TickCount;
        private static string Name = "a";
        private static readonly List<string> Names = ["a"];
        private static int Count(int left) => left <= 0 ? 0 : 1 + Count(left - 1);
        private static int Fibonacci(int turn) => turn < 2 ? turn : Fibonacci(turn - 1) + Fibonacci(turn - 2);
        private static void Down(RigDraft rig, Node above, string name, int left) { if (left <= 0) return; var here = rig.Control(name + "_link").Under(above); Down(rig, here, name + "a", left - 1); }
        private static void Rename(int left) { if (left <= 0) return; Rename(left - 1); Name = "b_group"; }
        private static void Before(RigDraft rig, int left) { if (left <= 0) return; Name = "a"; Before(rig, left - 1); rig.Group(Name); Name = "b_group"; }
        private static void Fill(List<string> names, int left) { if (left <= 0) return; names[0] = "b_group"; Fill(names, left - 1); }
        private static void Hand(List<string> names, int left) { if (left <= 0) { names[0] = "b_group"; return; } Hand([.. names], left - 1); Hand(names, left - 1); }
        private static List<string> Same(List<string> names, int left) => left <= 0 ? names : Same(names, left - 1);
        private static List<string> Other(int left) => left <= 0 ? Names : Other(left - 1);
        """;

    private const string Saying = """
        private static void Even(RigDraft rig, int left) { if (left <= 0) return; rig.Group("even"); Odd(rig, left - 1); }
        private static void Odd(RigDraft rig, int left) { if (left <= 0) return; rig.Group("odd"); Even(rig, left - 1); }
        private static void Walk(RigDraft rig, System.IO.DirectoryInfo folder) { rig.Group(folder.Name + "_grp"); foreach (var inner in folder.GetDirectories()) Walk(rig, inner); }
        """;

    [Theory]
    [InlineData("Rename(Turns); rig.Group(Name);")]
    [InlineData("Before(rig, Turns);")]
    [InlineData("var names = new List<string> { \"a\" }; Fill(names, Turns); rig.Group(names[0]);")]
    [InlineData("var names = new List<string> { \"a\" }; Hand(names, Turns); rig.Group(names[0]);")]
    [InlineData("var names = new List<string> { \"a\" }; Same(names, Turns)[0] = \"b_group\"; rig.Group(names[0]);")]
    [InlineData("Other(Turns)[0] = \"b_group\"; rig.Group(Names[0]);")]
    [InlineData("if (Count(Turns) < 0 && Fibonacci(Turns) == 1) throw new NotSupportedException(); rig.Group(Count(Turns) == 3 ? \"three_group\" : \"other_group\");")]
    [InlineData("var name = \"a\"; void Local(int left) { if (left <= 0) return; name = \"b_group\"; Local(left - 1); } Local(Turns); rig.Group(name);")]
    [InlineData("var name = \"a\"; Func<int, int> next = null!; next = left => { if (left <= 0) return 0; name = \"b_group\"; return next(left - 1); }; next(Turns); rig.Group(name);")]
    [InlineData("Down(rig, rig.Control(\"root\"), \"x\", Turns);")]
    public async Task What_some_call_may_have_changed_is_not_known(string code) => Assert.Empty(await Findings.In(code, Members));

    [Theory]
    [InlineData("Down(rig, rig.Control(\"root\"), \"x\", Turns); rig.Group(\"after\");", "CDY1001 \"after\"")]
    [InlineData("Rename(Turns); Fill([\"a\"], Turns); rig.Group(\"a\");", "CDY1001 \"a\"")]
    [InlineData("if (Count(Turns) == 3) rig.Group(\"three\"); rig.Group(\"after\");", "CDY1001 \"three\"", "CDY1001 \"after\"")]
    public async Task What_is_not_touched_by_any_stays_known(string code, params string[] expected) => Assert.Equal(expected, await Findings.In(code, Members));

    [Fact]
    public async Task What_every_call_says_is_found() => Assert.Equal(
        ["CDY1001 \"after\"", "CDY1001 \"even\"", "CDY1001 \"odd\"", "CDY1001 \"_grp\""],
        await Findings.In("Even(rig, Environment.TickCount); Walk(rig, new System.IO.DirectoryInfo(\".\")); rig.Group(\"after\");", Saying));

    [Fact]
    public async Task An_iterator_that_asks_itself_says_where_it_is_not_read()
    {
        var found = await Findings.In(
            "foreach (var turn in Down(Environment.TickCount)) rig.Group(\"turn_group\");",
            "private static IEnumerable<int> Down(int left) { if (left == 0) yield break; yield return left; foreach (var turn in Down(left - 1)) yield return turn; }");
        Assert.Equal(["CDY9002 Down(left - 1)"], found);
    }

    [Fact]
    public void One_to_a_known_depth_is_followed_all_the_way() => Oracle.Agrees(
        """
        var names = new List<string>();
        Down(rig, rig.Control("root"), 30, names);
        rig.Group($"{names.Count}{names[^1]}_group");
        """,
        "private static void Down(RigDraft rig, Node above, int left, List<string> names) { if (left == 0) return; names.Add($\"n{left}\"); Down(rig, rig.Control(names[^1]).Under(above), left - 1, names); }");
}
