using Condyle.Analyzers.Tests.Reporting;

namespace Condyle.CodeFixes.Tests;

/// <summary>CDY2001: one weight becomes the inverse, and no other changes.</summary>
public class BlendRepairTests
{
    private const string Arm = "var (arm, ik, fk, hand, amount) = Stage.Arm(rig, Side.Left);\n";

    private const string Hook = """
        var crane = rig.Control("crane");
        var ride = crane.Switch("ride");
        var hook = rig.Group("hook_group");

        """;

    [Fact]
    public Task A_forgotten_inverse_goes_to_the_source_that_the_switch_turns_off() => Repairs.Give(
        new RigSnippet(Arm + "rig.Blend(arm).From(ik, {|CDY2001:amount|}).From(fk, amount);"),
        new RigSnippet(Arm + "rig.Blend(arm).From(ik, amount.Inverse).From(fk, amount);"),
        title: "Weight copy 'ik' by the inverse of switch 'fk'");

    [Fact]
    public Task The_order_of_the_sources_makes_no_difference() => Repairs.Give(
        Arm + "rig.Blend(arm).From(fk, amount).From(ik, {|CDY2001:amount|});",
        Arm + "rig.Blend(arm).From(fk, amount).From(ik, amount.Inverse);");

    [Fact]
    public Task One_of_two_inverses_is_taken_away() => Repairs.Give(
        Arm + "rig.Blend(arm).From(ik, amount.Inverse).From(fk, {|CDY2001:amount.Inverse|});",
        Arm + "rig.Blend(arm).From(ik, amount.Inverse).From(fk, amount);");

    [Fact]
    public Task A_constant_becomes_the_inverse_of_the_other_weight() => Repairs.Give(
        Arm + "rig.Blend(arm).From(ik, {|CDY2001:1|}).From(fk, amount);",
        Arm + "rig.Blend(arm).From(ik, amount.Inverse).From(fk, amount);");

    [Fact]
    public Task A_weight_that_is_made_anew_each_time_is_not_asked_for_twice() => Repairs.AreNotOffered(new RigSnippet(
        Arm + """
        var amounts = new Amounts(hand);
        rig.Blend(arm).{|CDY2001:From(ik, 1)|}.From(fk, amounts.Next);
        """,
        More: "internal sealed class Amounts(Control hand) { private int made; public Switch Next => hand.Switch($\"amount_{made++}\"); }"));

    [Fact]
    public Task A_weight_that_a_record_keeps_is() => Repairs.Give(
        new RigSnippet(Arm + "var limb = new Kept(amount);\nrig.Blend(arm).From(ik, {|CDY2001:1|}).From(fk, limb.Amount);", More: "internal sealed record Kept(Switch Amount);"),
        new RigSnippet(Arm + "var limb = new Kept(amount);\nrig.Blend(arm).From(ik, limb.Amount.Inverse).From(fk, limb.Amount);", More: "internal sealed record Kept(Switch Amount);"));

    [Fact]
    public Task A_constant_beside_an_inverse_becomes_the_switch() => Repairs.Give(
        Arm + "rig.Blend(arm).From(ik, amount.Inverse).From(fk, {|CDY2001:1f|});",
        Arm + "rig.Blend(arm).From(ik, amount.Inverse).From(fk, amount);");

    [Theory]
    [InlineData("CDY2001.InvertWeight", "ride.Inverse", "ride")]
    [InlineData("CDY2001.InvertWeight.2", "ride", "ride.Inverse")]
    public Task Where_names_do_not_tell_both_repairs_are_offered(string key, string first, string second) => Repairs.Give(
        new RigSnippet(Hook + "rig.Blend(hook).From(crane, {|CDY2001:ride|}).From(rig.Control(\"floor\"), ride);"),
        new RigSnippet(Hook + $"rig.Blend(hook).From(crane, {first}).From(rig.Control(\"floor\"), {second});"),
        key: key);

    [Fact]
    public Task A_weight_in_a_local_is_inverted_where_it_is_given() => Repairs.Give(
        Arm + """
        Weight toIk = amount;
        rig.Blend(arm).From(ik, {|CDY2001:toIk|}).From(fk, amount);
        rig.Label("ik_label", "IK").ShownBy(toIk);
        """,
        Arm + """
        Weight toIk = amount;
        rig.Blend(arm).From(ik, toIk.Inverse).From(fk, amount);
        rig.Label("ik_label", "IK").ShownBy(toIk);
        """);

    [Fact]
    public Task A_parameter_is_inverted_in_the_helper() => Repairs.Give(
        new RigSnippet(
            Arm + "Mix(rig, arm, ik, fk, amount, amount);",
            "private static void Mix(RigDraft rig, Chain arm, Copy ik, Copy fk, Weight first, Weight second) => rig.Blend(arm).From(ik, {|CDY2001:first|}).From(fk, second);"),
        new RigSnippet(
            Arm + "Mix(rig, arm, ik, fk, amount, amount);",
            "private static void Mix(RigDraft rig, Chain arm, Copy ik, Copy fk, Weight first, Weight second) => rig.Blend(arm).From(ik, first.Inverse).From(fk, second);"));

    [Fact]
    public Task A_helper_in_another_file_is_repaired_there() => Repairs.Give(
        new RigSnippet(
            "foreach (var side in Side.Both) Mixer.Mix(rig, Stage.Arm(rig, side));",
            More: "internal static class Mixer { public static void Mix(RigDraft rig, Limb limb) => rig.Blend(limb.Chain).From(limb.Ik, {|CDY2001:limb.Amount|}).From(limb.Fk, limb.Amount); }"),
        new RigSnippet(
            "foreach (var side in Side.Both) Mixer.Mix(rig, Stage.Arm(rig, side));",
            More: "internal static class Mixer { public static void Mix(RigDraft rig, Limb limb) => rig.Blend(limb.Chain).From(limb.Ik, limb.Amount.Inverse).From(limb.Fk, limb.Amount); }"));

    [Fact]
    public Task A_weight_that_is_more_than_a_name_is_put_in_parentheses() => Repairs.Give(
        Arm + """
        var hold = hand.Switch("hold");
        rig.Blend(arm).From(ik, {|CDY2001:amount * hold|}).From(fk, amount * hold);
        """,
        Arm + """
        var hold = hand.Switch("hold");
        rig.Blend(arm).From(ik, (amount * hold).Inverse).From(fk, amount * hold);
        """);

    [Fact]
    public Task A_conditional_that_is_a_weight_only_as_a_whole_is_left_alone() => Repairs.AreNotOffered(new RigSnippet(
        Arm + """
        var isSoft = hand.Name == "hand_left";
        rig.Blend(arm).{|CDY2001:From(ik, isSoft ? amount : 1f)|}.From(fk, isSoft ? amount : 0f);
        """));

    [Fact]
    public Task A_helper_that_another_caller_uses_rightly_is_left_alone() => Repairs.AreNotOffered(new RigSnippet(
        """
        foreach (var side in Side.Both)
        {
            var (arm, ik, fk, hand, amount) = Stage.Arm(rig, side);
            Mix(rig, arm, ik, fk, side == Side.Left ? amount : amount.Inverse, amount);
        }
        """,
        "private static void Mix(RigDraft rig, Chain arm, Copy ik, Copy fk, Weight first, Weight second) => rig.Blend(arm).{|CDY2001:From(ik, first)|}.From(fk, second);"));

    [Theory]
    [InlineData("foreach (var (copy, weight) in new[] { (ik, {0}), (fk, amount) }) blend.From(copy, weight);")]
    [InlineData("foreach (var (copy, weight) in new (Copy, Weight)[] { (fk, amount), (ik, {0}) }) { var given = copy; blend = blend.From(given, weight); }")]
    [InlineData("foreach (var row in new[] { (Copy: ik, Share: {0}), (Copy: fk, Share: amount) }) blend.From(row.Copy, row.Share);")]
    [InlineData("var rows = new[] { (ik, {0}), (fk, amount) };\nforeach (var row in rows) blend.From(row.Item1, row.Item2);")]
    [InlineData("IReadOnlyList<(Copy, Weight)> rows = [(ik, {0}), (fk, amount)];\nforeach (var (copy, weight) in rows) blend.From(copy, weight);")]
    [InlineData("var copies = new Queue<Copy>([ik, fk]);\nforeach (var weight in new[] { {0}, amount }) blend.From(copies.Dequeue(), weight);")]
    public Task A_weight_in_a_table_is_inverted_in_its_row(string loop) => Repairs.Give(
        Arm + "var blend = rig.Blend(arm);\n" + loop.Replace("{0}", "{|CDY2001:amount|}"),
        Arm + "var blend = rig.Blend(arm);\n" + loop.Replace("{0}", "amount.Inverse"));

    [Theory]
    [InlineData("foreach (var (copy, weight) in new[] { (ik, amount), (fk, amount) }) if (arm.Count > 0) blend.{0}(copy, weight){1};")]
    [InlineData("foreach (var (copy, weight) in new[] { (ik, amount), (fk, amount) }) { blend.{0}(copy, weight){1}; rig.Label($\"{copy}_label\", \"IK\").ShownBy(weight); }")]
    [InlineData("foreach ((Copy copy, Switch weight) in new[] { (ik, amount), (fk, amount) }) blend.{0}(copy, weight){1};")]
    [InlineData("foreach (var (copy, weight) in new (Copy, Switch)[] { (ik, amount), (fk, amount) }) blend.{0}(copy, weight){1};")]
    [InlineData("var rows = new[] { (ik, amount), (fk, amount) };\nrows[0] = (ik, amount);\nforeach (var (copy, weight) in rows) blend.{0}(copy, weight){1};")]
    [InlineData("foreach (var row in new[] { (ik, amount), (fk, amount) }.Reverse()) blend.{0}(row.Item1, row.Item2){1};")]
    public Task A_table_whose_row_is_not_known_or_serves_others_is_left_alone(string loop) => Repairs.AreNotOffered(new RigSnippet(
        Arm + "var blend = rig.Blend(arm);\n" + loop.Replace("{0}", "{|CDY2001:From").Replace("{1}", "|}")));

    [Fact]
    public Task A_row_that_is_right_for_another_side_is_left_alone() => Repairs.AreNotOffered(new RigSnippet(
        """
        foreach (var side in Side.Both)
        {
            var (arm, ik, fk, hand, amount) = Stage.Arm(rig, side);
            var toIk = side == Side.Left ? amount : amount.Inverse;
            var blend = rig.Blend(arm);
            foreach (var (copy, weight) in new[] { (ik, toIk), (fk, amount) })
                blend.{|CDY2001:From(copy, weight)|};
        }
        """));

    [Theory]
    [InlineData("CDY2001.InvertWeight", "ride.Inverse", "ride")]
    [InlineData("CDY2001.InvertWeight.2", "ride", "ride.Inverse")]
    public Task Of_a_table_where_names_do_not_tell_both_rows_are_offered(string key, string first, string second) => Repairs.Give(
        new RigSnippet(Hook + "var (floor, blend) = (rig.Control(\"floor\"), rig.Blend(hook));\nforeach (var (node, weight) in new[] { (crane, {|CDY2001:ride|}), (floor, ride) }) blend.From(node, weight);"),
        new RigSnippet(Hook + $"var (floor, blend) = (rig.Control(\"floor\"), rig.Blend(hook));\nforeach (var (node, weight) in new[] {{ (crane, {first}), (floor, {second}) }}) blend.From(node, weight);"),
        key: key);

    [Fact]
    public Task Constants_are_left_alone() => Repairs.AreNotOffered(new RigSnippet(
        Arm + "rig.Blend(arm).From(ik, 0.5f).{|CDY2001:From(fk, 0.4f)|};"));
}
