using Condyle.CodeFixes.Refactorings;

namespace Condyle.CodeFixes.Tests.Refactorings;

public class LabelPairTests
{
    private const string Arm = "        var (arm, ik, fk, hand, amount) = Stage.Arm(rig, Side.Left);\n";

    [Fact]
    public async Task A_blend_said_once_gets_both_labels_by_plain_names()
    {
        var (before, after) = await Offered.By<LabelPairRefactoring>(
            new(Arm + "        rig.Blend(arm)$$.From(ik, amount.Inverse).From(fk, amount);"),
            "Add the labels 'IK' and 'FK'",
            Arm + """
                    rig.Blend(arm).From(ik, amount.Inverse).From(fk, amount);
                    rig.Label("ik_arm_label_left", "IK").ShownBy(amount.Inverse);
                    rig.Label("fk_arm_label_left", "FK").ShownBy(amount);
            """);
        Assert.Equal(
            ["label # fk_arm_label_left 'FK' under none shown by #", "label # ik_arm_label_left 'IK' under none shown by 1 − #"],
            Offered.Model(after).Except(Offered.Model(before)).Select(line => line.Trim()).Order());
        Assert.Empty(Offered.Model(before).Except(Offered.Model(after)));
    }

    [Fact]
    public Task In_a_loop_over_the_sides_they_are_called_after_the_side() => Offered.By<LabelPairRefactoring>(
        new("""
                    foreach (var side in Side.Both)
                    {
                        var (leftArm, ik, fk, hand, amount) = Stage.Arm(rig, side);
                        rig.Blend(leftArm).From(ik, amount.Inverse).From(fk, $$amount); // 0: IK has the arm
                    }
            """),
        "Add the labels 'IK' and 'FK'",
        """
                foreach (var side in Side.Both)
                {
                    var (leftArm, ik, fk, hand, amount) = Stage.Arm(rig, side);
                    rig.Blend(leftArm).From(ik, amount.Inverse).From(fk, amount);
                    rig.Label($"ik_arm_label_{side}", "IK").ShownBy(amount.Inverse);
                    rig.Label($"fk_arm_label_{side}", "FK").ShownBy(amount); // 0: IK has the arm
                }
        """);

    [Fact]
    public Task In_a_helper_that_knows_no_side_they_are_called_after_the_chain() => Offered.By<LabelPairRefactoring>(
        new(
            "        Mix(rig, Stage.Arm(rig, Side.Left));\n        Mix(rig, Stage.Arm(rig, Side.Right));",
            """
                private static void Mix(RigDraft rig, Limb limb)
                {
                    var chain = limb.Chain;
                    rig.$$Blend(chain).From(limb.Ik, limb.Amount.Inverse).From(limb.Fk, limb.Amount);
                }
            """),
        "Add the labels 'IK' and 'FK'",
        "        Mix(rig, Stage.Arm(rig, Side.Left));\n        Mix(rig, Stage.Arm(rig, Side.Right));",
        """
            private static void Mix(RigDraft rig, Limb limb)
            {
                var chain = limb.Chain;
                rig.Blend(chain).From(limb.Ik, limb.Amount.Inverse).From(limb.Fk, limb.Amount);
                rig.Label($"ik_{chain.Root}_label", "IK").ShownBy(limb.Amount.Inverse);
                rig.Label($"fk_{chain.Root}_label", "FK").ShownBy(limb.Amount);
            }
        """);

    [Fact]
    public Task Only_the_one_that_is_missing_is_added() => Offered.By<LabelPairRefactoring>(
        new(Arm + """
                    rig.Blend(arm).From(ik, amount.Inverse).From(fk, amount$$);
                    rig.Label("switched", "FK").ShownBy(amount);
            """),
        "Add the label 'IK'",
        Arm + """
                    rig.Blend(arm).From(ik, amount.Inverse).From(fk, amount);
                    rig.Label("ik_arm_label_left", "IK").ShownBy(amount.Inverse);
                    rig.Label("switched", "FK").ShownBy(amount);
            """);

    [Theory]
    [InlineData("rig.Blend(arm)$$.From(ik, amount).From(fk, amount);")] // a slip of its own
    [InlineData("rig.Blend(arm)$$.From(ik, 1f);")]
    [InlineData("$$rig.Label(\"ik\", \"IK\").ShownBy(amount.Inverse);")]
    [InlineData("rig.Blend(arm)$$.From(ik, amount.Inverse).From(fk, amount); rig.Label(\"one\", \"IK\").ShownBy(amount.Inverse); rig.Label(\"other\", \"FK\").ShownBy(amount);")]
    [InlineData("foreach (var i in new[] { 1 }) rig.Blend(arm)$$.From(ik, amount.Inverse).From(fk, amount);")] // no block to say more in
    public Task Where_none_is_missing_or_it_is_not_known_nothing_is_offered(string code) => Offered.Nothing<LabelPairRefactoring>(new(Arm + code));
}
