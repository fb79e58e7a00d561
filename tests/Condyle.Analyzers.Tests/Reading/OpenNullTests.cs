namespace Condyle.Analyzers.Tests.Reading;

/// <summary>An unknown text may be missing: a guard against that, or for it, must not make a rig that builds look as if it failed.</summary>
public class OpenNullTests
{
    private const string Config = """
        public static class Config
        {
            public static string? Word => Environment.GetEnvironmentVariable("BOAT");
            public static string Need(bool isGiven) => isGiven ? "" : throw new InvalidOperationException();
        }
        """;

    [Theory]
    [InlineData("if (Config.Word != null) throw new NotSupportedException();")]
    [InlineData("if (Config.Word is not null) throw new NotSupportedException();")]
    [InlineData("if (Config.Word == null) throw new NotSupportedException();")]
    [InlineData("if (ReferenceEquals(Config.Word, null)) throw new NotSupportedException();")]
    [InlineData("if (!ReferenceEquals(Config.Word, null)) throw new NotSupportedException();")]
    [InlineData("if (Config.Word is string) throw new NotSupportedException();")]
    [InlineData("if (Config.Word is not { Length: > 2 }) throw new NotSupportedException();")]
    [InlineData("switch (Config.Word) { case null: break; default: throw new NotSupportedException(); }")]
    [InlineData("while (Config.Word is not null) throw new NotSupportedException();")]
    [InlineData("Config.Need(Config.Word is not null);")]
    [InlineData("Config.Need(Config.Word is null);")]
    [InlineData("if (new[] { Config.Word, \"b\" }.FirstOrDefault(word => word == \"zz\") is not null) throw new NotSupportedException();")]
    [InlineData("if (System.IO.File.ReadLines(\"a\").FirstOrDefault(line => line.Length > 3) is { } bad) throw new NotSupportedException(bad);")]
    [InlineData("var names = Config.Word == \"x\" ? new[] { \"a\" } : new[] { \"b\", \"c\" }; if (names.FirstOrDefault(name => name.Contains(' ')) is { } bad) throw new NotSupportedException(bad);")]
    [InlineData("if (new Dictionary<string, string> { [\"b\"] = \"c\" }.GetValueOrDefault(Config.Word ?? \"q\") is not null) throw new NotSupportedException();")]
    [InlineData("var made = Config.Word is null ? new object() : null; if (made is null) throw new NotSupportedException();")]
    public async Task A_guard_on_an_unknown_text_fails_no_rig(string guard) => Assert.Equal(
        ["CDY1001 \"crate\""],
        await Findings.In(guard + " rig.Group(\"crate\");", more: Config));

    [Fact]
    public async Task The_arm_for_a_missing_text_is_read_too() => Assert.Equal(
        ["CDY1001 \"crate\"", "CDY1001 \"hook\""],
        await Findings.In("""if (Config.Word is null) rig.Group("crate"); else rig.Group("hook");""", more: Config));

    [Fact]
    public async Task A_text_that_is_put_together_is_never_missing() => Assert.Equal(
        ["CDY1001 \"hook\""],
        await Findings.In("""if ($"{Config.Word}_group" is null) rig.Group("crate"); else rig.Group("hook");""", more: Config));
}
