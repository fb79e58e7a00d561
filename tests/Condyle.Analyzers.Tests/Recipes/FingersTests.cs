using Condyle.Analyzers.Tests.Reading;
using Condyle.Analyzers.Tests.Reporting;
using Condyle.Tests.Shared;

namespace Condyle.Analyzers.Tests.Recipes;

/// <summary>A hand's fingers: what they make could be written out, and a reading knows as much of it as of what is.</summary>
public class FingersTests
{
    private const string Joints = """
        private static JointSet Finger(Joint wrist, string name, Side side, float z)
        {
            var first = wrist.Child($"{name}_1_{side}", at: new(side.Sign * 0.08f, 0, z));
            return new(first, first.Child($"{name}_2_{side}", at: new(side.Sign * 0.04f, 0, 0)));
        }
        """;

    private const string Before = """
        foreach (var side in Side.Both)
        {
            var wrist = joints.Wrist[side];
            var hand = rig.Control($"hand_{side}").Under(root).PlacedAt(wrist);
            rig.Drive(wrist).ByChannels(hand);
            JointSet[] fingers = [Finger(wrist, "thumb", side, 0.05f), Finger(wrist, "index", side, 0.03f), Finger(wrist, "middle", side, 0), Finger(wrist, "ring", side, -0.03f)];

        """;

    private const string Groups = """
            var parts = rig.Group($"fingers_{side}_group").Under(systems).PlacedAt(wrist);
            rig.Drive(parts).ByMatrix(wrist);
            var curled = new List<List<Group>>();
            var turns = new List<Control>();
            foreach (var finger in fingers)
            {
                Node above = parts;
                var groups = new List<Group>();
                foreach (var joint in finger)
                {
                    groups.Add(rig.Group($"curl_{joint}_group").Under(above).PlacedAt(joint));
                    var turn = rig.Control($"turn_{joint}").Under(groups[^1]).PlacedAt(joint).Lock(Channels.Move).OnLayer("fingers");
                    rig.Drive(joint).ByChannels(turn);
                    above = turn;
                    turns.Add(turn);
                }

                curled.Add(groups);
            }

            var curl = hand.Dial("curl", 0, 1, unit: DialUnit.Share);

        """;

    [Fact]
    public Task It_makes_what_could_be_written_out() => Written.AreTheSame(
        Before + """
            rig.Fingers(wrist, fingers, "fingers", side, hand, systems);
        }
        """,
        Before + Groups + """
            for (var i = 0; i < 4; i++)
            {
                var response = rig.Response(curl).Key(0, 0).Key(1, i == 0 ? 40 : 80);
                foreach (var group in curled[i])
                    response.OntoTurn(group, Axis.X);
            }

            var spread = hand.Dial("spread", 0, 1, unit: DialUnit.Share);
            rig.Response(spread).Key(0, 0).Key(1, 12 * side.Sign).OntoTurn(curled[1][0], Axis.Z);
            rig.Response(spread).Key(0, 0).Key(1, -12 * side.Sign).OntoTurn(curled[3][0], Axis.Z);
        }
        """,
        Joints);

    [Theory]
    [InlineData("", "-70 * side.Sign")]
    [InlineData(", AllAxesMirror = true", "-70")]
    public Task Its_options_make_what_could_be_written_out(string mirroring, string degrees) => Written.AreTheSame(
        Before + $$"""
            var made = rig.Fingers(wrist, fingers, "fingers", side, hand, systems, new FingersOptions { HasThumb = false, Spreads = false, CurlAxis = Axis.Z, CurlDegrees = -70{{mirroring}} });
            made.Turns[1][0].LimitTurn(Axis.X, -10, 10);
        }
        """,
        Before + Groups + $$"""
            foreach (var groups in curled)
            {
                var response = rig.Response(curl).Key(0, 0).Key(1, {{degrees}});
                foreach (var group in groups)
                    response.OntoTurn(group, Axis.Z);
            }

            turns[2].LimitTurn(Axis.X, -10, 10);
        }
        """,
        Joints);

    [Fact]
    public void A_hand_with_one_finger_beside_its_thumb_has_no_dial_that_sets_nothing()
    {
        var rig = Written.Run(Written.Files(Before + "rig.Fingers(wrist, [fingers[0], fingers[1]], \"fingers\", side, hand, systems); }", Joints));
        Assert.Empty(rig.Findings);
        Assert.Equal(2, rig.Model.Dials.Count);
    }

    [Theory]
    [InlineData("Some(wrist)")]
    [InlineData("[Some(wrist)[0]]")]
    [InlineData("fingers, \"fingers\", side, hand, systems, new FingersOptions { Spreads = Console.ReadLine()!.Length > 3 }); Some(wrist")]
    public async Task What_it_would_have_to_guess_is_left_open_and_said(string fingers)
    {
        var call = fingers.Contains("FingersOptions", StringComparison.Ordinal) ? $"rig.Fingers(wrist, {fingers});" : $"rig.Fingers(wrist, {fingers}, \"fingers\", side, hand, systems);";
        var found = await FrontEnds.Read(Written.Files(
            Before + call + " }", Joints + " private static JointSet[] Some(Joint wrist) => System.Text.Json.JsonSerializer.Deserialize<JointSet[]>(\"[]\")!;"));
        Assert.NotEmpty(found);
        Assert.All(found, finding => Assert.Equal("CDY9002", finding.Id));
    }

    [Fact]
    public void Angles_and_axes_that_are_not_known_leave_the_rest_known()
    {
        var read = Assert.Single(Oracle.Read(CompiledCode.Compile(Written.Files(
            Before + """
                rig.Fingers(wrist, fingers, "fingers", side, hand, systems, new FingersOptions { CurlDegrees = Console.ReadLine()!.Length, SpreadDegrees = Console.ReadLine()!.Length });
            }
            """,
            Joints)), "TestRig").Paths);
        Assert.Equal(12, read.Model.Responses.Count);
    }
}
