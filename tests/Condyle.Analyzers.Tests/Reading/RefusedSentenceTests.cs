namespace Condyle.Analyzers.Tests.Reading;

/// <summary>What a draft refuses the reading refuses as well, as it is the same draft; and what isn't known is given the benefit of the doubt.</summary>
public class RefusedSentenceTests
{
    private const string Hand = "var hand = rig.Control(\"hand\"); var hip = rig.Skeleton(\"docker\").Root(\"hip\"); var leg = rig.Chain(hip, hip.Child(\"knee\").Child(\"ankle\")); ";

    private const string Config = """
        public static class Config
        {
            public static string Name => Environment.MachineName;
            public static int Count => Environment.TickCount;
        }
        """;

    [Theory]
    [InlineData("hand.Choice(\"space\", [\"world\", \"\"]);")]
    [InlineData("rig.Space(hand).In(\"\", hip);")]
    [InlineData("hand.Switch(string.Empty);")]
    [InlineData("hand.OnLayer($\"{\"\"}\");")]
    [InlineData("rig.Label(\"\", \"IK\");")]
    [InlineData("leg.Copy(\"\");")]
    [InlineData("hip.Child(\"\");")]
    [InlineData("hand.LimitTurn((Axis)17, 0, 1);")]
    [InlineData("hip.Child(\"prop\", (JointRole)9);")]
    [InlineData("hand.Shaped((ControlShape)int.MaxValue);")]
    [InlineData("hand.Lock((Channels)512);")]
    [InlineData("hand.Accept(\"CDY5001\", \" \");")]
    [InlineData("leg.Without(JointRole.Deform);")]
    public async Task What_cannot_be_meant_fails_whenever_it_runs(string body) =>
        Assert.StartsWith("CDY9001", Assert.Single(await Findings.In(Hand + body)), StringComparison.Ordinal);

    [Theory]
    [InlineData("hand.Choice(\"space\", [\"world\", Config.Name]);")]
    [InlineData("hand.OnLayer(Config.Name);")]
    [InlineData("hand.LimitTurn((Axis)Config.Count, 0, 1);")]
    [InlineData("hand.Accept(\"CDY5001\", Config.Name);")]
    public async Task What_only_a_run_knows_is_left_in_peace(string body) =>
        Assert.DoesNotContain(await Findings.In(Hand + body, more: Config), finding => finding.StartsWith("CDY9001", StringComparison.Ordinal));

    [Fact]
    public async Task A_definition_that_waits_fails_whenever_it_runs() => Assert.Equal(
        ["CDY9001 Define"],
        await Findings.InFiles(("rig.cs", Oracle.Usings + "public sealed class Tide : IRigDefinition { public async void Define(RigDraft rig) { rig.Group(\"odds\"); await System.Threading.Tasks.Task.Yield(); } }")));
}
