using Condyle.Analyzers.Tests.Reporting;

namespace Condyle.Analyzers.Tests.Recipes;

/// <summary>A tail and a pair of wings: what they make could be written out, and a reading knows as much of it as of what is.</summary>
public class TailTests
{
    private const string Joints = """
        private static Chain Bones(RigDraft rig, Joint above, string name, string side)
        {
            var first = above.Child($"{name}_1{side}", at: new(side == "_left" ? 0.1f : side == "_right" ? -0.1f : 0, 0, -0.1f));
            return rig.Chain(first, first.Child($"{name}_2{side}", at: new(0, 0, -0.1f)).Child($"{name}_3{side}", at: new(0, 0, -0.1f)));
        }
        """;

    [Fact]
    public Task A_tail_makes_what_could_be_written_out() => Written.AreTheSame(
        "rig.Tail(Bones(rig, joints.Pelvis, \"tail\", \"\"), \"tail\", under: root).Bend.LimitTurn(Axis.X, -90, 90);",
        """
        var bones = Bones(rig, joints.Pelvis, "tail", "");
        var bend = rig.Control("tail_bend").Under(root).PlacedAt(bones.Root).Lock(Channels.Move);
        Node above = root;
        foreach (var joint in bones)
        {
            var turn = rig.Control($"turn_{joint}").Under(above).PlacedAt(joint).Lock(Channels.Move);
            rig.Drive(joint).ByChannels(turn);
            above = joint;
        }

        rig.Falloff(bones).From(bend).Sharing(1, 1);
        bend.LimitTurn(Axis.X, -90, 90);
        """,
        Joints);

    [Fact]
    public Task A_wing_of_each_side_makes_what_could_be_written_out() => Written.AreTheSame(
        """
        foreach (var side in Side.Both)
            rig.Tail(Bones(rig, joints.Pelvis, "wing", $"_{side}"), "wing", side, root, new TailOptions { FirstShare = 0.2f, LastShare = 2 });
        """,
        """
        foreach (var side in Side.Both)
        {
            var bones = Bones(rig, joints.Pelvis, "wing", $"_{side}");
            var bend = rig.Control($"wing_bend_{side}").Under(root).PlacedAt(bones.Root).Lock(Channels.Move);
            Node above = root;
            foreach (var joint in bones)
            {
                var turn = rig.Control($"turn_{joint}").Under(above).PlacedAt(joint).Lock(Channels.Move);
                rig.Drive(joint).ByChannels(turn);
                above = joint;
            }

            rig.Falloff(bones).From(bend).Sharing(0.2f, 2);
        }
        """,
        Joints);

    [Fact]
    public async Task A_chain_that_is_not_known_is_left_open_and_said()
    {
        var found = await FrontEnds.Read(Written.Files("rig.Tail(rig.Chain(joints.Hip.Left, Environment.TickCount > 9 ? joints.Ankle.Left : joints.Toes.Left), \"tail\", root);"));
        Assert.NotEmpty(found);
        Assert.All(found, finding => Assert.Equal("CDY9002", finding.Id));
    }
}
