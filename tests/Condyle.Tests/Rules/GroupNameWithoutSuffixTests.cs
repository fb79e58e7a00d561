using Condyle.Model;
using Condyle.Naming;
using Condyle.Rules;

namespace Condyle.Tests.Rules;

public class GroupNameWithoutSuffixTests
{
    [Fact]
    public void A_group_without_the_suffix_is_found_with_its_future_name()
    {
        var finding = Checked.Only(rig => rig.Group("arm_left"));
        Assert.Equal("CDY1001", finding.Rule.Id);
        Assert.Equal(
            "Group 'arm_left' doesn't end in '_group': people and tools that tell groups from controls by their names will take it for a handle. Name it 'arm_left_group'.",
            finding.Message);
        var repair = Assert.IsType<AppendText>(Assert.Single(finding.Repairs));
        Assert.Equal(("_group", "Rename to 'arm_left_group'"), (repair.Suffix, repair.Title));
    }

    [Theory]
    [InlineData("arm_left_group")]
    [InlineData("_group")]
    public void A_group_with_the_suffix_is_left_alone(string name) => Checked.IsClean(rig => rig.Group(name));

    [Theory]
    [InlineData("group")]
    [InlineData("arm_GROUP")]
    [InlineData("arm_group_")]
    [InlineData("arm_group_left")]
    public void Only_the_very_suffix_at_the_very_end_counts(string name) => Checked.Only(rig => rig.Group(name));

    [Fact]
    public void Only_groups_need_it() => Checked.IsClean(rig =>
    {
        Checked.Arm(rig);
        rig.Label("arm", "Arm");
    });

    [Fact]
    public void The_teams_suffix_is_the_one_that_counts()
    {
        var grp = Conventions.Default with { GroupSuffix = "_grp" };
        Assert.Empty(Checked.Findings(rig => rig.Group("arm_grp"), grp));
        Assert.Contains("Name it 'arm_group_grp'.", Checked.Only(rig => rig.Group("arm_group"), grp).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_suffix_of_one_letter_has_no_short_form() =>
        Assert.Contains("Name it 'arm_xx_'.", Checked.Only(rig => rig.Group("arm_xx"), Conventions.Default with { GroupSuffix = "_" }).Message, StringComparison.Ordinal);

    [Fact]
    public void A_space_that_joints_have_too_is_no_excuse() =>
        Assert.Equal("CDY1001", Assert.Single(Checked.Findings(rig =>
        {
            rig.Skeleton("quay").Root("left arm");
            rig.Group("arm group");
        }), finding => finding.Rule.Id.StartsWith("CDY100", StringComparison.Ordinal)).Rule.Id);

    [Fact]
    public void A_name_that_may_end_rightly_is_left_alone()
    {
        Checked.IsClean(rig => rig.Group(Text.Open, PlaceId.None));
        Checked.IsClean(rig => rig.Group(Text.Of(["arm_", null]), PlaceId.None));
        Checked.IsClean(rig => rig.Group(Text.Of([null, "_group"]), PlaceId.None));
        Checked.IsClean(rig => rig.Group(Text.Of([null, "oup"]), PlaceId.None));
        Checked.IsClean(rig => RigDraft.Open(rig).Unknown(UnknownKind.Group));
    }

    [Fact]
    public void A_name_whose_known_end_is_wrong_is_found_with_its_unknown_part_left_out() =>
        Assert.StartsWith("Group '…_left' doesn't end", Checked.Only(rig => rig.Group(Text.Of([null, "_left"]), PlaceId.None)).Message, StringComparison.Ordinal);
}
