using Condyle.Model;
using Condyle.Rules;

namespace Condyle.Tests.Rules;

public class MatrixDriveOntoExportedJointTests
{
    [Theory]
    [InlineData(JointRole.Deform, "deform joint")]
    [InlineData(JointRole.Twist, "deform joint")]
    [InlineData(JointRole.Helper, "exported joint")]
    public void A_joint_driven_by_matrix_is_found(JointRole role, string called)
    {
        var finding = Checked.Only(rig => rig.Drive(rig.Skeleton("docker").Root("wrist_left", role)).ByMatrix(rig.Control("hand_left")));
        Assert.Equal("CDY3001", finding.Rule.Id);
        Assert.Equal(
            $"The {called} 'wrist_left' follows 'hand_left' by matrix: an engine reads a joint's own translation, rotation and scale, so nothing of this motion is exported and the joint stands still in the game. Drive it by channels.",
            finding.Message);
        Assert.Equal("Drive 'wrist_left' by channels", Assert.IsType<CallInstead>(Assert.Single(finding.Repairs)).Title);
    }

    [Fact]
    public void What_is_never_exported_may_follow_by_matrix() => Checked.IsClean(rig =>
    {
        var (arm, ik, fk, hand, _) = Checked.Arm(rig);
        rig.Drive(rig.Group("arm_group")).ByMatrix(hand);
        rig.Drive(rig.Control("root")).ByMatrix(arm.Root);
        rig.Drive(ik.Tip).ByMatrix(hand);
        rig.Drive(fk.Of(arm[1])).ByMatrix(arm[1]);
    });

    [Fact]
    public void A_joint_driven_by_channels_is_left_alone() => Checked.IsClean(rig =>
    {
        var (arm, _, _, hand, _) = Checked.Arm(rig);
        rig.Drive(arm.Root).ByChannels(hand).KeepingOffset().WithScale();
    });

    [Fact]
    public void A_node_that_may_be_a_joint_is_left_alone() => Checked.IsClean(rig => rig.Drive(Node.Open(rig), PlaceId.None).ByMatrix(Control.Open(rig), PlaceId.None));

    [Fact]
    public void A_joint_of_which_only_that_is_known_is_found() => Assert.StartsWith(
        "The exported joint '…' follows '…' by matrix",
        Checked.Only(rig => rig.Drive(Joint.Open(rig), PlaceId.None).ByMatrix(Control.Open(rig), PlaceId.None)).Message,
        StringComparison.Ordinal);
}
