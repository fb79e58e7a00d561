namespace Condyle.Analyzers.Tests.Reporting;

/// <summary>CDY3001, flagged at the verb.</summary>
public class DriveTests
{
    private const string Joints = "var joints = Stage.Joints(rig, Side.Left);\nvar hand = rig.Control(\"hand\");\n";

    [Fact]
    public Task A_deform_joint_driven_by_matrix_is_flagged() => RigSnippet.Finds(Joints + """
        rig.Drive(joints.Elbow).{|CDY3001:ByMatrix(hand)|};
        """);

    [Fact]
    public Task A_joint_that_moves_no_skin_is_exported_too() => RigSnippet.Finds(Joints + """
        rig.Drive(joints.Root).{|CDY3001:ByMatrix(hand)|};
        """);

    [Fact]
    public Task A_sentence_in_two_parts_is_flagged_at_the_second() => RigSnippet.Finds(Joints + """
        var drive = rig.Drive(joints.Elbow);
        drive.{|CDY3001:ByMatrix(hand)|}.KeepingOffset();
        """);

    [Fact]
    public Task A_sentence_after_a_question_mark_is_flagged_and_left_as_it_is() => RigSnippet.Finds(Joints + """
        RigDraft? maybe = rig;
        maybe?.Drive(joints.Elbow).{|CDY3001:ByMatrix(hand)|};
        """);

    [Fact]
    public Task A_helper_with_a_joint_is_flagged_in_the_helper() => RigSnippet.Finds(
        Joints + """
        Follow(rig, joints.Elbow, hand);
        Follow(rig, joints.Wrist, hand);
        """,
        "private static void Follow(RigDraft rig, Joint joint, Control control) => rig.Drive(joint).{|CDY3001:ByMatrix(control)|};");

    [Fact]
    public Task A_helper_that_groups_use_as_well_is_flagged_for_the_joint() => RigSnippet.Finds(
        Joints + """
        Follow(rig, rig.Group("arm_group"), hand);
        Follow(rig, joints.Wrist, hand);
        """,
        "private static void Follow(RigDraft rig, Node node, Control control) => rig.Drive(node).{|CDY3001:ByMatrix(control)|};");

    [Fact]
    public Task A_helper_that_nobody_calls_yet_is_flagged_when_it_drives_any_joint() => RigSnippet.FindsByReading(
        "",
        more: """
        public static class Following
        {
            public static void Joint(RigDraft rig, Joint joint, Control control) => rig.Drive(joint).{|CDY3001:ByMatrix(control)|};
            public static void Any(RigDraft rig, Node node, Control control) => rig.Drive(node).ByMatrix(control);
        }
        """);

    [Fact]
    public Task A_loop_over_a_chain_gives_one_finding() => RigSnippet.Finds(Joints + """
        foreach (var joint in rig.Chain(joints.Shoulder, joints.Wrist))
            rig.Drive(joint).{|CDY3001:ByMatrix(rig.Control($"turn_{joint.Name}"))|};
        """);

    [Fact]
    public Task A_verb_picked_by_a_condition_is_flagged_when_it_is_reached() => RigSnippet.Finds(Joints + """
        foreach (var joint in rig.Chain(joints.Shoulder, joints.Wrist))
        {
            var drive = rig.Drive(joint);
            _ = joint == joints.Elbow ? drive.{|CDY3001:ByMatrix(hand)|} : drive.ByChannels(hand);
        }
        """);

    [Fact]
    public Task Nodes_that_are_never_exported_may_follow_by_matrix() => RigSnippet.Finds(Joints + """
        var arm = rig.Chain(joints.Shoulder, joints.Wrist);
        var ik = arm.Copy("ik");
        rig.Drive(rig.Group("arm_group")).ByMatrix(hand);
        rig.Drive(rig.Control("elbow")).ByMatrix(joints.Elbow);
        rig.Drive(ik.Root).ByMatrix(hand);
        rig.Drive(ik.Of(joints.Elbow)).ByMatrix(joints.Elbow);
        rig.Drive(joints.Elbow).ByChannels(hand);
        """);
}
