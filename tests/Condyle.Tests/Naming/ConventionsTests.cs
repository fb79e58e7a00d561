using Condyle.Model;
using Condyle.Naming;

namespace Condyle.Tests.Naming;

/// <summary>A team's settings: what can't be keeps its default, as the build says when it warns of it.</summary>
public class ConventionsTests
{
    [Fact]
    public void What_is_set_counts_and_the_rest_keeps_its_default() =>
        Assert.Equal(Conventions.Default with { LeftMark = "_l", LongestName = 31 }, Set(("LeftMark", "_l"), ("LongestName", "31"), ("GroupSuffix", "")));

    [Theory]
    [InlineData("GroupSuffix", "_my group")]
    [InlineData("LeftMark", "l/")]
    [InlineData("RightMark", "_left")]
    [InlineData("LongestName", "abc")]
    [InlineData("LongestName", "0")]
    [InlineData("LongestName", "-5")]
    [InlineData("LongestName", "100000")]
    [InlineData("TagPlace", "behind")]
    [InlineData("NamePattern", "[a-z")]
    [InlineData("TwistPattern", "(twist")]
    [InlineData("MostJoints", "many")]
    [InlineData("JointScale", "no")]
    public void What_cannot_be_keeps_its_default(string name, string value) => Assert.Equal(Conventions.Default, Set((name, value)));

    [Theory]
    [InlineData("hand_left", "hand_right")]
    [InlineData("arm_right_group", "arm_left_group")]
    [InlineData("left_left", "left_right")]
    public void A_name_says_its_side_at_its_end_or_before_an_underscore(string name, string other) => Assert.Equal(other, SidedName.Of(name, Conventions.Default)!.Value.Counterpart);

    [Theory]
    [InlineData("head")]
    [InlineData("rope_left_to_right")]
    [InlineData("crate_leftover")]
    [InlineData("left")]
    [InlineData("")]
    public void A_name_with_no_mark_or_both_says_no_side(string name) => Assert.Null(SidedName.Of(name, Conventions.Default));

    [Fact]
    public void A_name_that_is_not_known_says_no_side() => Assert.Null(SidedName.Of(Text.Open + "_left", Conventions.Default));

    [Theory]
    [InlineData("before", "elbow_left", "ik_elbow_left")]
    [InlineData("before", "head", "ik_head")]
    [InlineData("after", "elbow_left", "elbow_ik_left")]
    [InlineData("after", "elbow_left_twist", "elbow_ik_left_twist")]
    [InlineData("after", "arm_group", "arm_ik_group")]
    [InlineData("after", "head", "head_ik")]
    public void A_tag_stands_where_the_team_has_it(string place, string name, string tagged) => Assert.Equal(tagged, Set(("TagPlace", place)).Tagged("ik", name).ToString());

    [Fact]
    public void A_tag_after_a_part_that_is_not_known_makes_a_name_that_is_not() => Assert.True(Set(("TagPlace", "after")).Tagged("ik", Text.Open + "_left").IsOpen);

    private static Conventions Set(params (string Name, string Value)[] settings) => Conventions.From(name => settings.FirstOrDefault(setting => setting.Name == name).Value);
}
