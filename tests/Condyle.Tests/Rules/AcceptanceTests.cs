using Condyle.Model;

namespace Condyle.Tests.Rules;

/// <summary>A finding that a team means to keep.</summary>
public class AcceptanceTests
{
    [Fact]
    public void It_holds_for_its_element_and_its_rule() => Checked.IsClean(rig =>
    {
        var (arm, ik, _, hand, amount) = Checked.Arm(rig);
        rig.Group("cargo").Accept("CDY1001", because: "The controller finds it by this name.");
        rig.Blend(arm).From(ik, amount).Accept("CDY2001", because: "It is let go.");
        rig.Drive(arm.Root).ByMatrix(hand).Accept("CDY3001", because: "A preview.");
    });

    [Fact]
    public void It_may_be_said_of_the_node_that_is_moved() => Checked.IsClean(rig =>
    {
        var (arm, _, _, hand, amount) = Checked.Arm(rig);
        rig.Drive(arm.Root.Accept("CDY3001", because: "A preview.")).ByMatrix(hand);
        rig.Blend(rig.Control("hook").Accept("CDY2001", because: "It is let go.")).From(hand, amount);
    });

    [Fact]
    public void Another_rule_is_not_covered() => Checked.Only(rig => rig.Group("cargo").Accept("CDY2001", because: "This is about blends."));

    [Fact]
    public void Another_element_is_not_covered() => Checked.Only(rig =>
    {
        rig.Group("cargo").Accept("CDY1001", because: "The controller finds it by this name.");
        rig.Group("ropes");
    });

    [Fact]
    public void One_that_may_be_meant_counts()
    {
        Checked.IsClean(rig => rig.Group("cargo").Accept(Text.Open, Text.Open, PlaceId.None));
        Checked.IsClean(rig =>
        {
            rig.Group("cargo");
            Group.Open(rig).Accept("CDY1001", "It may be this one.", PlaceId.None);
        });
    }
}
