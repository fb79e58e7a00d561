namespace Condyle.Analyzers.Tests.Reporting;

/// <summary>CDY2001, flagged at the weight that should be an inverse.</summary>
public class BlendTests
{
    private const string Arm = "var (arm, ik, fk, hand, amount) = Stage.Arm(rig, Side.Left);\n";

    [Fact]
    public Task A_forgotten_inverse_is_flagged_at_the_source_that_the_switch_turns_off() => RigSnippet.Finds(Arm + """
        rig.Blend(arm).From(ik, {|CDY2001:amount|}).From(fk, amount);
        """);

    [Fact]
    public Task Two_inverses_are_flagged_at_the_source_that_the_switch_turns_on() => RigSnippet.Finds(Arm + """
        rig.Blend(arm).From(ik, amount.Inverse).From(fk, {|CDY2001:amount.Inverse|});
        """);

    [Fact]
    public Task A_switch_of_which_the_name_says_nothing_is_flagged_at_the_first_source() => RigSnippet.Finds("""
        var (arm, ik, fk, hand, amount) = Stage.Arm(rig, Side.Left, "follow");
        rig.Blend(arm).From(ik, {|CDY2001:amount|}).From(fk, amount);
        """);

    [Fact]
    public Task A_constant_beside_a_switch_is_flagged() => RigSnippet.Finds(Arm + """
        rig.Blend(arm).From(ik, {|CDY2001:1|}).From(fk, amount);
        """);

    [Fact]
    public Task Constants_that_miss_one_are_flagged_at_the_last_source() => RigSnippet.Finds(Arm + """
        rig.Blend(arm).From(ik, 0.5f).{|CDY2001:From(fk, 0.4f)|};
        """);

    [Fact]
    public Task A_lone_source_that_can_be_turned_off_is_flagged() => RigSnippet.Finds(Arm + """
        rig.Blend(arm).{|CDY2001:From(ik, amount)|};
        """);

    [Fact]
    public Task A_blend_of_one_node_is_flagged() => RigSnippet.Finds("""
        var ride = rig.Control("crate").Switch("ride");
        rig.Blend(rig.Group("hook_group")).From(rig.Control("crane"), {|CDY2001:ride|}).From(rig.Control("floor"), ride);
        """);

    [Fact]
    public Task Three_sources_that_miss_one_are_flagged() => RigSnippet.Finds("""
        var (arm, ik, fk, hand, amount) = Stage.Arm(rig, Side.Left);
        var held = arm.Copy("held");
        var hold = hand.Switch("held");
        rig.Blend(arm).From(ik, amount.Inverse).From(fk, amount).{|CDY2001:From(held, hold)|};
        """);

    [Fact]
    public Task The_inverse_of_another_switch_is_flagged() => RigSnippet.Finds(Arm + """
        var other = rig.Control("crane").Switch("other");
        rig.Blend(arm).From(ik, {|CDY2001:other.Inverse|}).From(fk, amount);
        """);

    [Fact]
    public Task Switches_of_which_it_is_not_known_whether_they_are_one_are_not_set_against_each_other() => RigSnippet.Finds(
        "rig.Group(\"crate_group\");",
        "static void Limb(RigDraft rig, Chain arm, Copy ik, Copy fk, Switch a, Switch b) => rig.Blend(arm).From(ik, a.Inverse).From(fk, b);");

    [Fact]
    public Task A_weight_that_goes_through_a_local_is_flagged_where_it_is_given() => RigSnippet.Finds(Arm + """
        Weight toIk = amount;
        var toFk = amount;
        rig.Blend(arm).From(ik, {|CDY2001:toIk|}).From(fk, toFk);
        """);

    [Fact]
    public Task A_weight_that_goes_through_a_helper_is_flagged_in_the_helper() => RigSnippet.Finds(
        Arm + "Mix(rig, arm, ik, fk, amount, amount);",
        "private static void Mix(RigDraft rig, Chain arm, Copy ik, Copy fk, Weight first, Weight second) => rig.Blend(arm).From(ik, {|CDY2001:first|}).From(fk, second);");

    [Fact]
    public Task A_helper_that_another_caller_uses_rightly_is_flagged_as_a_whole() => RigSnippet.Finds(
        """
        foreach (var side in Side.Both)
        {
            var (arm, ik, fk, hand, amount) = Stage.Arm(rig, side);
            Mix(rig, arm, ik, fk, side == Side.Left ? amount : amount.Inverse, amount);
        }
        """,
        "private static void Mix(RigDraft rig, Chain arm, Copy ik, Copy fk, Weight first, Weight second) => rig.Blend(arm).{|CDY2001:From(ik, first)|}.From(fk, second);");

    [Fact]
    public Task A_helper_in_another_file_is_followed() => RigSnippet.Finds(
        """
        foreach (var side in Side.Both)
            Mixer.Mix(rig, Stage.Arm(rig, side));
        """,
        more: "internal static class Mixer { public static void Mix(RigDraft rig, Limb limb) => rig.Blend(limb.Chain).From(limb.Ik, {|CDY2001:limb.Amount|}).From(limb.Fk, limb.Amount); }");

    [Fact]
    public Task A_loop_over_sources_and_sides_gives_one_finding() => RigSnippet.Finds("""
        foreach (var side in Side.Both)
        {
            var limb = Stage.Arm(rig, side);
            var blend = rig.Blend(limb.Chain);
            foreach (var source in new[] { limb.Ik, limb.Fk })
                blend.{|CDY2001:From(source, limb.Amount)|};
        }
        """);

    [Fact]
    public Task A_switch_shown_on_two_controls_is_one_switch() => RigSnippet.Finds(Arm + """
        var shown = amount.AlsoOn(rig.Control("root"));
        rig.Blend(arm).From(ik, shown.Inverse).From(fk, amount);
        """);

    [Fact]
    public Task Weights_that_add_up_to_one_are_left_alone_however_they_are_written() => RigSnippet.Finds("""
        var (arm, ik, fk, hand, s) = Stage.Arm(rig, Side.Left);
        var held = arm.Copy("held");
        var t = hand.Switch("held");
        rig.Blend(arm).From(ik, s.Inverse).From(fk, s);
        rig.Blend(arm).From(ik, s * t).From(fk, s * t.Inverse).From(held, s.Inverse);
        rig.Blend(arm).From(ik, s * t + s * t.Inverse).From(fk, s.Inverse);
        rig.Blend(arm).From(ik, (s * t).Inverse).From(fk, s * t);
        rig.Blend(arm).From(ik, s.Inverse.Inverse).From(fk, s.Inverse);
        rig.Blend(arm).From(ik, 0.25f).From(fk, 0.75f);
        rig.Blend(arm).From(ik, 0.1f + (Weight)0.2f).From(fk, 0.7f);
        rig.Blend(arm).From(ik, 0.5f * s).From(fk, s * 0.5f).From(held, s.Inverse);
        rig.Blend(arm).From(fk, 1);
        """);
}
