namespace Condyle.Analyzers.Tests.Reading;

/// <summary>What is thrown on some of the ways only: a rig that builds on another one hasn't failed.</summary>
public class OpenThrowTests
{
    private const string Config = """
        public static class Config
        {
            public static int Count => Environment.TickCount;
            public static Exception Fail() => Count > 3 ? new InvalidOperationException("a") : new ArgumentException("b");
        }
        """;

    [Theory]
    [InlineData("using var held = new System.IO.StringReader(\"a\"); foreach (var word in new[] { \"a\", \"b\" }) { if (word.Length < Config.Count) break; throw new InvalidOperationException(); }")]
    [InlineData("var i = 0; try { while (true) { if (++i > Config.Count) break; if (i > 50) throw new InvalidOperationException(); } } finally { i = 0; }")]
    [InlineData("var i = 0; try { while (true) { if (++i > Config.Count) break; if (i > 50) throw new InvalidOperationException(); } } catch (Exception) { Console.WriteLine(\"no\"); throw; }")]
    [InlineData("string? c = null; try { foreach (var word in new[] { \"a\", \"b\" }) { if (Config.Count > 3) break; throw new InvalidOperationException(); } c = \"c\"; } catch (InvalidOperationException) { } if (c == null) throw new InvalidOperationException();")]
    [InlineData("static string Find(int n) { if (n > 3) throw new ArgumentException(\"a\"); else throw new ArgumentException(\"b\"); } try { Find(Config.Count); } catch (ArgumentException) { }")]
    [InlineData("static string Find(int n) { if (n > 3) throw new ArgumentException(\"a\"); else throw new InvalidOperationException(\"b\"); } try { Find(Config.Count); } catch (Exception e) when (e is ArgumentException or InvalidOperationException) { }")]
    [InlineData("try { throw (Config.Count > 3 ? new InvalidOperationException(\"a\") : (Exception)new ArgumentException(\"b\")); } catch (InvalidOperationException) { } catch (ArgumentException) { }")]
    [InlineData("try { throw Config.Fail(); } catch (InvalidOperationException) { } catch (ArgumentException) { }")]
    [InlineData("try { System.IO.File.ReadAllText(\"none\"); throw new InvalidOperationException(\"it must not be there\"); } catch (Exception e) when (e is System.IO.IOException or UnauthorizedAccessException) { }")]
    public async Task A_rig_that_builds_has_not_failed(string code) => Assert.Equal(
        ["CDY1001 \"crate\""],
        await Findings.In(code + " rig.Group(\"crate\");", more: Config));

    [Theory]
    [InlineData("try { throw Config.Fail(); } catch (Exception e) { rig.Group(e is InvalidOperationException ? \"one_group\" : e is ArgumentException ? \"two_group\" : \"other\"); }")]
    [InlineData("string? name = null; try { name = System.IO.File.ReadAllText(\"none\"); } catch (System.IO.IOException) when (name == null) { } if (name != null) rig.Group(\"a_group\"); else rig.Group(\"b_group\");")]
    public async Task Of_what_kind_something_thrown_is_may_be_open(string code) => Assert.Equal([], await Findings.In(code, more: Config));

    [Theory]
    [InlineData("string name; var one = Named.Load(); try { name = one!.Name + \"_group\"; name = \"a\"; } catch (NullReferenceException) { name = \"b_group\"; }")]
    [InlineData("string name; var one = Config.Count > 3 ? new Named() : null; try { one!.Go(); name = \"a\"; } catch (Exception) { name = \"b_group\"; }")]
    [InlineData("string name; var one = Config.Count > 3 ? new Named() : null; try { one!.Name = \"x\"; name = \"a\"; } catch { name = \"b_group\"; }")]
    [InlineData("string name; Action? act = Config.Count > 3 ? () => { } : null; try { act!(); name = \"a\"; } catch (Exception) { name = \"b_group\"; }")]
    [InlineData("string name; var act = (Action?)AppContext.GetData(\"act\"); try { act!.Invoke(); name = \"a\"; } catch (NullReferenceException) { name = \"b_group\"; }")]
    [InlineData("string name; var some = Config.Count > 3 ? new[] { 1 } : null; try { _ = some![0]; name = \"a\"; } catch (NullReferenceException) { name = \"b_group\"; }")]
    [InlineData("string name; var some = Config.Count > 3 ? new List<int>() : null; try { foreach (var one in some!) { } name = \"a\"; } catch (NullReferenceException) { name = \"b_group\"; }")]
    public async Task What_may_be_null_may_fail(string code) => Assert.Equal(
        ["CDY1001 \"caught\"", "CDY1001 \"not\""],
        (await Findings.In(code + " if (name == \"b_group\") rig.Group(\"caught\"); else rig.Group(\"not\");", more: Config + "public sealed class Named { public string Name = \"\"; public void Go() { } public static Named? Load() => System.Text.Json.JsonSerializer.Deserialize<Named>(\"\"); }")).Distinct());

    [Fact]
    public async Task The_same_value_is_null_each_time_or_never() => Assert.Equal(
        ["CDY1001 \"both\"", "CDY1001 \"none\""],
        await Findings.In(
            "var (one, fails) = (Named.Load(), 0); for (var turn = 0; turn < 2; turn++) { try { one!.Go(); } catch (NullReferenceException) { fails++; } } rig.Group(fails == 2 ? \"both\" : fails == 0 ? \"none\" : \"wrong\");",
            more: Config + "public sealed class Named { public void Go() { } public static Named? Load() => System.Text.Json.JsonSerializer.Deserialize<Named>(\"\"); }"));
}
