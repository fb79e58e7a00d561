using Condyle.CodeFixes.Refactorings;

namespace Condyle.CodeFixes.Tests.Refactorings;

public class OtherSideTests
{
    [Fact]
    public async Task A_call_for_one_side_becomes_a_loop_over_both()
    {
        var (before, after) = await Offered.By<OtherSideRefactoring>(
            new("        var body = rig.Control(\"body\");\n        $$Hand(rig, body, Side.Left);", "    private static void Hand(RigDraft rig, Control body, Side side) => rig.Control($\"hand_{side}\").Under(body).Switch(\"fk\");"),
            "Add the right side",
            """
                    var body = rig.Control("body");
                    foreach (var side in Side.Both)
                        Hand(rig, body, side);
            """);
        var added = Offered.Model(after).Except(Offered.Model(before)).ToList();
        Assert.NotEmpty(added);
        Assert.All(added, line => Assert.Contains("right", line, StringComparison.Ordinal));
        Assert.Empty(Offered.Model(before).Except(Offered.Model(after)));
    }

    [Fact]
    public Task Statements_by_hand_become_a_loop_with_their_layout_and_comments() => Offered.By<OtherSideRefactoring>(
        new("""
                    var skeleton = rig.Skeleton("crane");
                    var root = skeleton.Root("tower");
                    var above = rig.Control("base");

                    // The arm that swings out.
                    var arm = root.Child("arm_left", at: new Vector3(0.5f, 2, 0)); // shoulder
                    var swing = rig.Control("swing_left")
                        .Under(above)
                        .PlacedAt(arm);

                    rig.Drive(a$$rm).ByChannels(swing); // by hand
                    rig.Group("loads_group");
            """),
        "Add the right side",
        """
                var skeleton = rig.Skeleton("crane");
                var root = skeleton.Root("tower");
                var above = rig.Control("base");

                // The arm that swings out.
                foreach (var side in Side.Both)
                {
                    var arm = root.Child($"arm_{side}", at: new Vector3(0.5f * side.Sign, 2, 0)); // shoulder
                    var swing = rig.Control($"swing_{side}")
                        .Under(above)
                        .PlacedAt(arm);

                    rig.Drive(arm).ByChannels(swing); // by hand
                }
                rig.Group("loads_group");
        """);

    [Fact]
    public Task Joints_that_come_in_pairs_are_asked_for_their_side() => Offered.By<OtherSideRefactoring>(
        new("""
                    var both = Stage.Both(rig);
                    var feet = rig.Control("feet");
                    [|var foot = rig.Control("foot_left").Under(feet).PlacedAt(both.Left);
                    rig.Drive(both.Left).ByChannels(foot);
                    foot.Dial("roll", -30, 60);|]
            """, "    private static class Stage { public static JointPair Both(RigDraft rig) { var root = rig.Skeleton(\"feet\").Root(\"pelvis\"); return new(root.Child(\"ankle_left\"), root.Child(\"ankle_right\")); } }"),
        "Add the right side",
        """
                var both = Stage.Both(rig);
                var feet = rig.Control("feet");
                foreach (var side in Side.Both)
                {
                    var foot = rig.Control($"foot_{side}").Under(feet).PlacedAt(both[side]);
                    rig.Drive(both[side]).ByChannels(foot);
                    foot.Dial("roll", -30, 60);
                }
        """);

    [Fact]
    public Task The_right_side_becomes_both_as_well() => Offered.By<OtherSideRefactoring>(
        new("""
                    var quay = rig.Skeleton("quay").Root("quay");
                    var lamp = quay.Child("lamp_right", at: new Vector3(-0.3f, 2, 0));
                    rig.Drive($$lamp).ByChannels(rig.Control($"turn_{lamp}").PlacedAt(rig.Spot(quay, new Vector3(-0.3f, 2, 0))));
            """),
        "Add the left side",
        """
                var quay = rig.Skeleton("quay").Root("quay");
                foreach (var side in Side.Both)
                {
                    var lamp = quay.Child($"lamp_{side}", at: new Vector3(0.3f * side.Sign, 2, 0));
                    rig.Drive(lamp).ByChannels(rig.Control($"turn_{lamp}").PlacedAt(rig.Spot(quay, new Vector3(0.3f * side.Sign, 2, 0))));
                }
        """);

    [Theory]
    [InlineData("Stage.$$Arm(rig, Side.Left); Stage.Arm(rig, Side.Right);")] // both are there
    [InlineData("var hand = rig.$$Control(\"hand_left\"); rig.Control(\"hook\").Under(hand);")] // what comes after needs the one
    [InlineData("rig.$$Control(\"hand_left\").Under(rig.Control(\"body\"));")] // the body would be there twice
    [InlineData("rig.$$Control(\"rope_left_to_right\");")]
    [InlineData("rig.$$Control(\"head\");")]
    public Task Where_a_loop_would_not_give_the_mirror_image_nothing_is_offered(string code) => Offered.Nothing<OtherSideRefactoring>(new("        " + code));
}
