namespace Condyle.Analyzers.Tests.Reading;

/// <summary>Dials, choices, measured angles, responses and spaces as they are read.</summary>
public class SettingSentenceTests
{
    private const string Config = """
        public static class Config
        {
            public static int Count => Environment.TickCount;
            public static string Word => Environment.MachineName;
            public static string[] Words => Environment.GetCommandLineArgs();
        }
        """;

    [Fact]
    public void Dials_choices_responses_and_spaces_are_read_as_they_run() => Oracle.Agrees(
        """
        var elbow = rig.Skeleton("s").Root("elbow");
        var (world, chest, hand) = (rig.Control("world"), rig.Control("chest"), rig.Control("hand"));
        var curl = hand.Dial("curl", -10, 90, atRest: 5, unit: DialUnit.Degrees).AlsoOn(chest);
        var ride = hand
            .Choice("ride", Rides)
            .AlsoOn(world);
        foreach (var axis in new[] { Axis.X, Axis.Z })
            rig.Response(curl).Key(-10, -10)
                .Key(90, 90, slope: 0.5f)
                .Continued()
                .OntoTurn(elbow, axis);
        rig.Response(rig.Angle(elbow).About(Axis.Y)).Key(0, 0).Key(120, 1, 0).OntoMorph("body", $"bulge_{Rides.Length}").OntoScale(elbow, Axis.Y);
        rig.Response(hand.Switch("shown", 1)).Key(0, 0).OntoMove(elbow, Axis.Y);
        rig.Space(hand, ride).In("chest", chest).In(Rides[0], world);
        var space = rig.Space(chest);
        foreach (var (name, node) in new[] { ("world", world), ("hand", hand) })
            space = space.In(name, node);
        rig.Blend(rig.Group("crate_group")).From(world, ride.Is("world")).From(chest, ride.Is("chest") + ride.Is("desk"));
        rig.Group($"{curl}_{ride}_group");
        rig.Control("desk").Choice("more", [.. Rides, "rope"]);
        """,
        "private static readonly string[] Rides = [\"world\", \"chest\", \"desk\"];");

    [Fact]
    public async Task A_blend_that_leaves_out_an_option_is_found_beside_what_is_open() => Assert.Equal(
        ["CDY2001 From(hand, ride.Is(\"world\"))"],
        await Findings.In(
            """
            var (hand, chest, target) = (rig.Control("hand"), rig.Control("chest"), rig.Group("crate_group"));
            var ride = hand.Choice("ride", ["world", Config.Word, "chest"]);
            rig.Blend(target).From(hand, ride.Is("world")).From(chest, ride.Is("chest"));
            """,
            more: Config));

    [Theory]
    [InlineData("var ride = hand.Choice(\"ride\", Config.Words); rig.Blend(target).From(hand, ride.Is(\"world\")).From(chest, ride.Is(\"world\"));")]
    [InlineData("var ride = hand.Choice(\"ride\", [\"world\", \"chest\"]); rig.Blend(target).From(hand, ride.Is(\"world\")).From(chest, ride.Is(Config.Word));")]
    [InlineData("var space = rig.Space(hand); if (Config.Count > 3) space.In(Config.Word, chest); rig.Response(hand.Dial(\"d\", Config.Count, 9)).Key(Config.Count, 3).OntoTurn(chest, Axis.X);")]
    [InlineData("var space = rig.Space(hand); if (Config.Count > 3) space.In(\"ride\", chest); else space.In(\"ride\", target);")]
    [InlineData("var space = rig.Space(hand).In(\"ride\", chest); space.In(Config.Word, target);")]
    [InlineData("hand.LimitTurn(Axis.X, Config.Count, 90); rig.Drive(target).ByChannels(hand);")]
    public async Task What_is_open_about_them_keeps_rules_silent(string body) => Assert.Equal(
        [],
        await Findings.In("var (hand, chest, target) = (rig.Control(\"hand\"), rig.Control(\"chest\"), rig.Group(\"crate_group\"));" + body, more: Config));

    [Theory]
    [InlineData("1 - fk")]
    [InlineData("1f - (Weight)fk")]
    [InlineData("1 - 0.5f * fk - fk * 0.5f")]
    public void One_minus_a_switch_is_its_inverse(string weight)
    {
        const string Setting = "var hand = rig.Control(\"hand\"); var fk = hand.Switch(\"fk\"); var hip = rig.Skeleton(\"docker\").Root(\"hip\"); ";
        Oracle.Agrees(Setting + $"rig.Blend(hip).From(hand, fk).From(rig.Control(\"foot\"), {weight}); rig.Group(fk.Inverse == {weight} ? \"same_group\" : \"other\");");
    }

    [Fact]
    public async Task Its_difference_from_one_leaves_nothing_to_find() => Assert.Equal(
        [],
        await Findings.In("var hand = rig.Control(\"hand\"); var fk = hand.Switch(\"fk\"); rig.Blend(rig.Group(\"crate_group\")).From(hand, fk).From(rig.Control(\"foot\"), 1 - fk); rig.Group(fk.Inverse == 1 - fk ? \"same_group\" : \"other\");"));

    [Theory]
    [InlineData("hand.Dial(\"curl\", 1, 0);")]
    [InlineData("hand.Choice(\"ride\", [\"world\", \"chest\"]).Is(\"crate\");")]
    [InlineData("hand.Choice(\"ride\", [\"world\", \"world\"]);")]
    [InlineData("var crate = rig.Control(\"crate\"); rig.Space(hand).In(\"ride\", crate).In(\"ride\", crate);")]
    [InlineData("hand.LimitTurn((Axis)9, -10, 10);")]
    [InlineData("hand.LimitTurn(Axis.X, float.NaN, 10);")]
    [InlineData("hand.LimitMove(Axis.X, -1, float.NaN);")]
    public async Task What_can_never_be_right_is_found_while_it_is_typed(string body) =>
        Assert.StartsWith("CDY9001", Assert.Single(await Findings.In("var hand = rig.Control(\"hand\");" + body)), StringComparison.Ordinal);
}
