using Condyle.Analyzers.Tests.Reporting;

namespace Condyle.CodeFixes.Tests;

/// <summary>CDY3001: the verb changes, and nothing else of the sentence.</summary>
public class DriveRepairTests
{
    private const string Joints = "var joints = Stage.Joints(rig, Side.Left);\nvar hand = rig.Control(\"hand\");\n";

    [Fact]
    public Task The_drive_becomes_one_by_channels() => Repairs.Give(
        new RigSnippet(Joints + "rig.Drive(joints.Elbow).{|CDY3001:ByMatrix(hand)|}.KeepingOffset().WithScale();"),
        new RigSnippet(Joints + "rig.Drive(joints.Elbow).ByChannels(hand).KeepingOffset().WithScale();"),
        title: "Drive 'elbow_left' by channels");

    [Fact]
    public Task A_helper_is_repaired_once_for_all_joints() => Repairs.Give(
        new RigSnippet(
            Joints + """
            foreach (var joint in rig.Chain(joints.Shoulder, joints.Wrist))
                Follow(rig, joint, hand);
            """,
            "private static void Follow(RigDraft rig, Joint joint, Control control) => rig.Drive(joint).{|CDY3001:ByMatrix(control)|};"),
        new RigSnippet(
            Joints + """
            foreach (var joint in rig.Chain(joints.Shoulder, joints.Wrist))
                Follow(rig, joint, hand);
            """,
            "private static void Follow(RigDraft rig, Joint joint, Control control) => rig.Drive(joint).ByChannels(control);"));

    [Fact]
    public Task A_helper_that_groups_use_as_well_is_left_alone() => Repairs.AreNotOffered(new RigSnippet(
        Joints + """
        Follow(rig, rig.Group("arm_group"), hand);
        Follow(rig, joints.Wrist, hand);
        """,
        "private static void Follow(RigDraft rig, Node node, Control control) => rig.Drive(node).{|CDY3001:ByMatrix(control)|};"));

    [Fact]
    public Task A_method_group_is_renamed() => Repairs.Give(
        Joints + """
        Func<Node, Drive> follow = {|CDY3001:rig.Drive(joints.Elbow).ByMatrix|};
        follow(hand);
        """,
        Joints + """
        Func<Node, Drive> follow = rig.Drive(joints.Elbow).ByChannels;
        follow(hand);
        """);
}
