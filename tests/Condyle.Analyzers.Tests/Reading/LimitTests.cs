namespace Condyle.Analyzers.Tests.Reading;

/// <summary>Code that never ends, or never ends growing, is given up on, and the rig is said not to be read whole.</summary>
public class LimitTests
{
    [Theory]
    [InlineData("while (true) { }")]
    [InlineData("for (;;) { }")]
    [InlineData("again: goto again;")]
    [InlineData("var s = \"x\"; while (true) s += s;")]
    [InlineData("var s = new System.Text.StringBuilder(\"x\"); while (true) s.Append(s.ToString());")]
    [InlineData("var s = \"\".PadLeft(2000000000); rig.Control(s);")]
    [InlineData("var a = new int[2000000000]; rig.Control($\"{a.Length}\");")]
    [InlineData("var l = new List<int> { 1 }; while (true) l.AddRange(l.ToArray());")]
    [InlineData("var l = Enumerable.Range(0, int.MaxValue).ToList();")]
    [InlineData("Deep(0);")]
    [InlineData("Func<int, int>? f = null; f = x => f!(x + 1); f(0);")]
    [InlineData("foreach (var x in Forever()) { }")]
    [InlineData("while (true) rig.Control(\"c\");")]
    [InlineData("IEnumerable<int> s = [1]; while (true) s = s.Skip(0); ")]
    [InlineData("var link = new Link(null); while (true) { link = new Link(link); if (link == new Link(link)) break; }")]
    public async Task Runaway_code_is_given_up_on(string code)
    {
        var found = await Findings.In("rig.Group(\"crate\"); " + code, "private sealed record Link(Link? Next); static int Deep(int x) => Deep(x + 1) + 1; static IEnumerable<int> Forever() { while (true) yield return 1; }");

        Assert.Contains(found, finding => finding.StartsWith("CDY9002 ", StringComparison.Ordinal));
        Assert.Contains("CDY1001 \"crate\"", found);
    }

    [Fact]
    public async Task An_expression_of_thousands_of_terms_does_not_exhaust_the_stack()
    {
        var found = await Findings.In($"rig.Group(\"crate\"); var s = 1; rig.Control($\"{{{string.Concat(Enumerable.Repeat("s + ", 3000))}1}}\");");

        Assert.Contains("CDY1001 \"crate\"", found);
    }

    [Fact]
    public async Task A_weight_that_grows_without_end_is_open() => Assert.Equal(
        [],
        await Findings.In("""
            var a = rig.Control("a"); var s = a.Switch("s"); Weight w = s; for (var i = 0; i < 200; i++) w = w * w + s.Inverse;
            rig.Blend((Node)a).From(rig.Control("b"), w).From(rig.Control("c"), w);
            """));

    [Fact]
    public async Task Code_that_always_throws_is_an_error_at_its_place() => Assert.Equal(
        ["CDY9001 throw new InvalidOperationException(\"no\");"],
        await Findings.In("throw new InvalidOperationException(\"no\");"));

    [Fact]
    public async Task A_chain_that_runs_across_the_skeleton_is_an_error_at_its_place() => Assert.Equal(
        ["CDY9001 Chain(b, a)"],
        await Findings.In("""var a = rig.Skeleton("s").Root("a"); var b = a.Child("b"); rig.Chain(b, a);"""));
}
