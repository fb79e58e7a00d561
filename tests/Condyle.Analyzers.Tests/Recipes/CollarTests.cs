using Condyle.Analyzers.Tests.Reading;
using Condyle.Analyzers.Tests.Reporting;
using Condyle.Tests.Shared;

namespace Condyle.Analyzers.Tests.Recipes;

/// <summary>The collar: what it makes could be written out, and a reading knows as much of it as of what is.</summary>
public class CollarTests
{
    private const string Arm = """
        var chest = rig.Control("turn_chest").Under(root).PlacedAt(joints.Chest);
        rig.Drive(joints.Chest).ByChannels(chest);
        foreach (var side in Side.Both)
        {
            var collar = joints.Collar[side];
            var arm = rig.Limb(rig.Chain(joints.Shoulder[side], joints.Wrist[side]), "arm", side, under: chest, systems, space: root, new LimbOptions { Goal = "hand" });

        """;

    [Theory]
    [InlineData("", "collar", "follows", "0f")]
    [InlineData(", new CollarOptions { Name = \"clavicle\", Switch = \"goes_along\", Follows = 0.4f }", "clavicle", "goes_along", "0.4f")]
    public Task It_makes_what_could_be_written_out(string options, string name, string switched, string share) => Written.AreTheSame(
        Arm + $$"""
            rig.Collar(arm, collar, under: chest{{options}}).Turn.LimitTurn(Axis.X, -10, 20);
        }
        """,
        Arm + $$"""
            var still = rig.Group($"{{name}}_still_{side}_group").Under(chest).PlacedAt(collar);
            var aimed = rig.Group($"{{name}}_aim_{side}_group").Under(chest).PlacedAt(collar);
            rig.Aim(aimed).At(arm.Goal);
            var carried = rig.Group($"{{name}}_{side}_group").Under(chest).PlacedAt(collar);
            var turn = rig.Control($"turn_collar_{side}").Under(carried).PlacedAt(collar).Lock(Channels.Move);
            var amount = turn.Switch("{{switched}}", {{share}}).AlsoOn(arm.Goal) * arm.Fk.Inverse;
            rig.Blend(carried).From(still, amount.Inverse).From(aimed, amount);
            rig.Drive(collar).ByChannels(turn);
            arm.Root.Under(turn);
            turn.LimitTurn(Axis.X, -10, 20);
        }
        """);

    [Fact]
    public async Task A_share_and_names_that_are_not_known_leave_the_rest_known()
    {
        var files = Written.Files(Arm + """
                rig.Collar(arm, collar, chest, new CollarOptions { Switch = Console.ReadLine()!, Follows = Console.ReadLine()!.Length });
            }
            """);
        Assert.Empty(await FrontEnds.Read(files));
        var read = Assert.Single(Oracle.Read(CompiledCode.Compile(files), "TestRig").Paths);
        Assert.Equal(4, read.Model.Switches.Count);
    }

    [Fact]
    public async Task An_arm_that_is_not_known_is_left_open_and_said()
    {
        var found = await FrontEnds.Read(Written.Files(
            "rig.Collar(Arms()[0], joints.Collar.Left, root);", "private static Limb[] Arms() => System.Text.Json.JsonSerializer.Deserialize<Limb[]>(\"[]\")!;"));
        Assert.NotEmpty(found);
        Assert.All(found, finding => Assert.Equal("CDY9002", finding.Id));
    }
}
