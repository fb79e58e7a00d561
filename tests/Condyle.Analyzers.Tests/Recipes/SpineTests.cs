using Condyle.Analyzers.Tests.Reporting;

namespace Condyle.Analyzers.Tests.Recipes;

/// <summary>A spine, turned joint by joint or along a curve: what it makes could be written out, and a reading knows as much of it as of what is.</summary>
public class SpineTests
{
    private const string Bones = "var bones = rig.Chain(joints.Pelvis, joints.Head);\n";

    [Fact]
    public Task It_makes_what_could_be_written_out() => Written.AreTheSameOnTheWorld(
        Bones + "rig.Spine(bones, \"spine\", systems, world).Turns[2].LimitTurn(Axis.X, -40, 30);",
        Bones + """
            var body = rig.Control("body").Under(world).PlacedAt(joints.Pelvis);
            var hips = rig.Control("hips").Under(body).PlacedAt(joints.Waist).Lock(Channels.Move);
            rig.Drive(joints.Pelvis).ByChannels(hips).KeepingOffset();
            var above = body;
            foreach (var joint in bones.Skip(1))
            {
                var turn = rig.Control($"turn_{joint}").Under(above).PlacedAt(joint).Lock(Channels.Move);
                rig.Drive(joint).ByChannels(turn);
                above = turn;
            }

            above.LimitTurn(Axis.X, -40, 30);
            """);

    [Theory]
    [InlineData("Curves = true", "body", "hips", "")]
    [InlineData("Curves = true, Stretches = true, Body = \"torso\", Hips = \"pelvis_turn\"", "torso", "pelvis_turn", ".Stretching(body.Switch(\"stretch\"))")]
    public Task A_curve_makes_what_could_be_written_out(string options, string bodyName, string hipsName, string stretching) => Written.AreTheSameOnTheWorld(
        Bones + $"rig.Spine(bones, \"spine\", systems, world, new SpineOptions {{ {options} }});",
        Bones + $$"""
            var body = rig.Control("{{bodyName}}").Under(world).PlacedAt(joints.Pelvis);
            var parts = rig.Group("spine_group").Under(systems).PlacedAt(body);
            rig.Drive(parts).ByMatrix(body);
            var hips = rig.Control("{{hipsName}}").Under(body).PlacedAt(joints.Pelvis);
            var middle = rig.Control("spine_middle").Under(body).PlacedAt(joints.Chest).Lock(Channels.Turn);
            var top = rig.Control("spine_top").Under(body).PlacedAt(joints.Head);
            var copy = bones.Copy("curve").Under(parts);
            rig.Curve(copy).Through(hips).Through(middle).Through(top){{stretching}};
            rig.Drive(joints.Pelvis).ByChannels(hips);
            rig.Drive(joints.Waist).ByChannels(copy.Of(joints.Waist));
            rig.Drive(joints.Chest).ByChannels(copy.Of(joints.Chest));
            rig.Drive(joints.Head).ByChannels(copy.Of(joints.Head)).Writing(Channels.Move);
            rig.Drive(joints.Head).ByChannels(top).Writing(Channels.Turn);
            """);

    [Fact]
    public async Task A_spine_of_one_joint_fails_whenever_it_runs() => Assert.Equal(["CDY9001"], (await FrontEnds.Read(
        Written.FilesOnTheWorld("rig.Spine(rig.Chain(joints.Pelvis, joints.Pelvis), \"spine\", systems, world);"))).Select(finding => finding.Id));

    [Theory]
    [InlineData("rig.Chain(joints.Pelvis, Environment.TickCount > 9 ? joints.Chest : joints.Head), \"spine\", systems, world")]
    [InlineData("rig.Chain(joints.Pelvis, joints.Head), \"spine\", systems, world, new SpineOptions { Curves = Console.ReadLine()!.Length > 3 }")]
    public async Task What_it_would_have_to_guess_is_left_open_and_said(string given)
    {
        var found = await FrontEnds.Read(Written.FilesOnTheWorld($"rig.Spine({given});"));
        Assert.NotEmpty(found);
        Assert.All(found, finding => Assert.Equal("CDY9002", finding.Id));
    }
}
