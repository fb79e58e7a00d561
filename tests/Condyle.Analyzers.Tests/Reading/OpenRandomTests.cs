namespace Condyle.Analyzers.Tests.Reading;

/// <summary>What random numbers are written into that nobody can know.</summary>
public class OpenRandomTests
{
    [Theory]
    [InlineData("Random.Shared.Shuffle(names);")]
    [InlineData("Random.Shared.Shuffle(names.AsSpan());")]
    [InlineData("new Random().Shuffle(names);")]
    [InlineData("Random.Shared.GetItems<string>(new[] { \"a_group\" }, names);")]
    [InlineData("new Random(5).GetItems<string>(new[] { \"a_group\" }, names.AsSpan(0, 2));")]
    [InlineData("var q = new Random(5); q.NextInt64(); q.Shuffle(names);")]
    public async Task Names_are_not_known_afterwards(string code) => Assert.Empty(
        await Findings.In("var names = new[] { \"arm\", \"b_group\" }; " + code + " rig.Group(names[0]);"));

    [Theory]
    [InlineData("Random.Shared.NextBytes(bytes);")]
    [InlineData("new Random(5).NextBytes(bytes);")]
    [InlineData("new Random(5).NextBytes(bytes.AsSpan());")]
    public async Task Bytes_are_not_known_afterwards(string code) => Assert.Equal(
        ["CDY1001 \"none\""],
        await Findings.In("var bytes = new byte[3]; " + code + " if (bytes[0] != 0) rig.Group(\"a_group\"); else rig.Group(\"none\"); if (bytes[1] == 0) throw new InvalidOperationException();"));

    [Fact]
    public async Task What_is_only_drawn_from_stays_known() => Assert.Equal(
        ["CDY1001 \"arm\""],
        await Findings.In("var names = new[] { \"arm\", \"leg\" }; _ = Random.Shared.GetItems(names, 4); rig.Group(names[0]);"));

    [Fact]
    public async Task With_a_seed_the_order_is_known() => Assert.Equal(
        ["CDY1001 \"arm\""],
        await Findings.In("var names = new[] { \"arm\", \"leg\" }; new Random(5).Shuffle(names); rig.Group(names[0]);"));
}
