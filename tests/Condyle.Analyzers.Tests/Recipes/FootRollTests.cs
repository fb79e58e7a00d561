using Condyle.Analyzers.Tests.Reading;
using Condyle.Analyzers.Tests.Reporting;
using Condyle.Tests.Shared;

namespace Condyle.Analyzers.Tests.Recipes;

/// <summary>The foot that rolls: what it makes could be written out, and a reading knows as much of it as of what is.</summary>
public class FootRollTests
{
    private const string Leg = """
        foreach (var side in Side.Both)
        {
            var leg = rig.Limb(rig.Chain(joints.Hip[side], joints.Ankle[side]), "leg", side, under: root, systems, space: root, new LimbOptions { Goal = "foot" });

        """;

    [Theory]
    [InlineData("", "foot", "roll", 60, 35, 90, 55)]
    [InlineData(", new FootRollOptions { Name = \"boot\", Dial = \"tread\", HeelDegrees = 40, BallDegrees = 30, TipDegrees = 20 }", "boot", "tread", 40, 30, 50, 20)]
    public Task It_makes_what_could_be_written_out(string options, string name, string dial, int heel, int ball, int most, int tip) => Written.AreTheSame(
        Leg + $$"""
            rig.FootRoll(leg, joints.Toes[side], heel: new(0, -0.07f, -0.05f), tip: new(0, -0.01f, 0.07f){{options}});
        }
        """,
        Leg + $$"""
            var toes = joints.Toes[side];
            var ankle = joints.Ankle[side];
            var heel = rig.Group($"{{name}}_heel_{side}_group").Under(leg.Goal).PlacedAt(rig.Spot(ankle, new(0, -0.07f, -0.05f)));
            var tip = rig.Group($"{{name}}_tip_{side}_group").Under(heel).PlacedAt(rig.Spot(toes, new(0, -0.01f, 0.07f)));
            var ball = rig.Group($"{{name}}_ball_{side}_group").Under(tip).PlacedAt(rig.Spot(toes, Vector3.Zero));
            var reached = rig.Group($"{{name}}_ankle_{side}_group").Under(ball).PlacedAt(ankle);
            leg.Solver.Reach(reached);
            var roll = leg.Goal.Dial("{{dial}}", -{{heel}}, {{most}}, unit: DialUnit.Degrees);
            rig.Response(roll).Key(-{{heel}}, -{{heel}}).Key(0, 0).OntoTurn(heel, Axis.X);
            rig.Response(roll).Key(0, 0).Key({{ball}}, {{ball}}).OntoTurn(ball, Axis.X);
            rig.Response(roll).Key({{ball}}, 0).Key({{most}}, {{tip}}).OntoTurn(tip, Axis.X);
            var flat = rig.Group($"{{name}}_flat_toes_{side}_group").Under(tip).PlacedAt(toes);
            var turned = rig.Group($"{{name}}_turned_toes_{side}_group").Under(leg.Turns[2]).PlacedAt(toes);
            var carried = rig.Group($"{{name}}_toes_{side}_group").Under(leg.Parts).PlacedAt(toes);
            rig.Blend(carried).From(flat, leg.Fk.Inverse).From(turned, leg.Fk);
            var turn = rig.Control($"turn_toes_{side}").Under(carried).PlacedAt(toes).Lock(Channels.Move);
            rig.Drive(toes).ByChannels(turn).Writing(Channels.Turn);
        }
        """);

    [Fact]
    public async Task Numbers_and_names_that_are_not_known_leave_the_rest_known()
    {
        var files = Written.Files(Leg + """
            rig.FootRoll(leg, joints.Toes[side], new(0, -Number(), 0), new(0, 0, Number()), new FootRollOptions { Dial = Console.ReadLine()!, BallDegrees = Number() }).Toes.Lock(Channels.TurnY);
        }
        """, "private static float Number() => Console.ReadLine()!.Length;");
        Assert.All(await FrontEnds.Read(files), finding => Assert.Equal("CDY9002", finding.Id));
        var read = Assert.Single(Oracle.Read(CompiledCode.Compile(files), "TestRig").Paths);
        Assert.Equal(2, read.Model.Dials.Count);
        Assert.Equal(6, read.Model.Responses.Count);
    }

    [Theory]
    [InlineData("rig.Limb(rig.Chain(joints.Hip.Left, Environment.TickCount > 9 ? joints.Ankle.Left : joints.Toes.Left), \"leg\", Side.Left, root, systems, root)")]
    [InlineData("Legs()[0]")]
    public async Task A_leg_that_is_not_known_is_left_open_and_said(string leg)
    {
        var files = Written.Files(
            $"rig.FootRoll({leg}, joints.Toes.Left, Vector3.Zero, Vector3.UnitZ); rig.Control(\"idle\").Under(root).PlacedAt(joints.Toes.Left);",
            "private static Limb[] Legs() => System.Text.Json.JsonSerializer.Deserialize<Limb[]>(\"[]\")!;");
        var found = await FrontEnds.Read(files);
        Assert.NotEmpty(found);
        Assert.All(found, finding => Assert.Equal("CDY9002", finding.Id));
    }
}
