using Condyle.Analyzers.Tests.Reading;
using Condyle.Analyzers.Tests.Reporting;
using Condyle.Tests.Shared;

namespace Condyle.Analyzers.Tests.Recipes;

/// <summary>A head and eyes that look: what they make could be written out, and a reading knows as much of it as of what is.</summary>
public class HeadTests
{
    private const string Before = """
        var chest = rig.Control("turn_chest").Under(root).PlacedAt(joints.Chest);
        rig.Drive(joints.Chest).ByChannels(chest);

        """;

    private const string Eyes = """
        JointPair eyes = new(joints.Head.Child("eye_left", at: new(0.03f, 0.1f, 0.08f)), joints.Head.Child("eye_right", at: new(-0.03f, 0.1f, 0.08f)));
        rig.Drive(joints.Head).ByChannels(rig.Control("turn_head").Under(chest).PlacedAt(joints.Head));

        """;

    [Theory]
    [InlineData("", "look", "aim", 1)]
    [InlineData(", new HeadOptions { Look = \"gaze\", Switch = \"looks\", LookDistance = 2 }", "gaze", "looks", 2)]
    public Task A_head_makes_what_could_be_written_out(string options, string look, string aim, int distance) => Written.AreTheSame(
        Before + $"rig.Head(joints.Head, under: chest, space: root{options}).Turn.LimitTurn(Axis.X, -40, 40);",
        Before + $$"""
            var turn = rig.Control("turn_head").Under(chest).PlacedAt(joints.Head).Lock(Channels.Move);
            var look = rig.Control("{{look}}").Under(root).PlacedAt(rig.Spot(joints.Head, new(0, 0, {{distance}}))).Lock(Channels.Turn);
            var aimed = rig.Group("head_aim_group").Under(chest).PlacedAt(joints.Head);
            var up = rig.Group("head_up_group").Under(chest).PlacedAt(rig.Spot(joints.Head, Vector3.UnitY));
            rig.Aim(aimed).At(look).Up(up);
            var aim = turn.Switch("{{aim}}").AlsoOn(look);
            rig.Blend(joints.Head).From(turn, aim.Inverse).From(aimed, aim);
            turn.LimitTurn(Axis.X, -40, 40);
            """);

    [Theory]
    [InlineData("", "eyes", "0.1f", 1)]
    [InlineData(", new EyesOptions { Name = \"gaze\", Height = 0.2f, LookDistance = 2 }", "gaze", "0.2f", 2)]
    public Task Eyes_make_what_could_be_written_out(string options, string name, string height, int distance) => Written.AreTheSame(
        Before + Eyes + $"rig.Eyes(eyes.Left, eyes.Right, joints.Head, systems, space: root{options});",
        Before + Eyes + $$"""
            var parts = rig.Group("{{name}}_group").Under(systems).PlacedAt(joints.Head);
            rig.Drive(parts).ByMatrix(joints.Head);
            var up = rig.Group("{{name}}_up_group").Under(parts).PlacedAt(rig.Spot(joints.Head, Vector3.UnitY));
            var look = rig.Control("{{name}}").Under(root).PlacedAt(rig.Spot(joints.Head, new(0, {{height}}, {{distance}})));
            foreach (var side in Side.Both)
            {
                var target = rig.Control($"look_eye_{side}").Under(look).PlacedAt(rig.Spot(eyes[side], new(0, 0, {{distance}}))).Lock(Channels.Turn);
                rig.Aim(eyes[side]).At(target).Up(up);
            }
            """);

    [Fact]
    public async Task Numbers_and_names_that_are_not_known_leave_the_rest_known()
    {
        var files = Written.Files(Before + """
            rig.Head(joints.Head, chest, root, new HeadOptions { LookDistance = Console.ReadLine()!.Length, Look = Console.ReadLine()! });
            """);
        Assert.Empty(await FrontEnds.Read(files));
        var read = Assert.Single(Oracle.Read(CompiledCode.Compile(files), "TestRig").Paths);
        Assert.Single(read.Model.Switches);
    }
}
