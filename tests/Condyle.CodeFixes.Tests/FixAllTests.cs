using Condyle.Analyzers.Tests.Reporting;

namespace Condyle.CodeFixes.Tests;

/// <summary>All findings of a rule at once: none twice, none left.</summary>
public class FixAllTests
{
    [Fact]
    public Task All_names_of_a_file_are_repaired_at_once() => Repairs.Give(
        """
        rig.Group({|CDY1001:"arm"|}).Under(rig.Group({|CDY1001:"leg"|}));
        foreach (var side in Side.Both)
            rig.Group({|CDY1001:$"hip_{side}"|});
        """,
        """
        rig.Group("arm_group").Under(rig.Group("leg_group"));
        foreach (var side in Side.Both)
            rig.Group($"hip_{side}_group");
        """,
        steps: 3);

    [Fact]
    public Task Names_in_several_files_are_repaired_at_once() => Repairs.Give(
        new RigSnippet(
            """
            rig.Group({|CDY1001:"arm"|});
            Parts.Of(rig, {|CDY1001:"leg"|});
            Parts.All(rig);
            """,
            More: """
            internal static class Parts
            {
                public static Group Of(RigDraft rig, string name) => rig.Group(name);
                public static Group All(RigDraft rig) => Of(rig, {|CDY1001:"all"|});
            }
            """),
        new RigSnippet(
            """
            rig.Group("arm_group");
            Parts.Of(rig, "leg_group");
            Parts.All(rig);
            """,
            More: """
            internal static class Parts
            {
                public static Group Of(RigDraft rig, string name) => rig.Group(name);
                public static Group All(RigDraft rig) => Of(rig, "all_group");
            }
            """),
        steps: 3,
        documents: 2);

    [Fact]
    public Task A_text_that_two_rigs_use_wrongly_is_repaired_once() => Repairs.Give(
        new RigSnippet("rig.Group(Names.Arm);", More: """
            internal static class Names
            {
                private static readonly string part = {|CDY1001:"arm"|};
                public static string Arm => part;
            }

            public sealed class Crane : IRigDefinition
            {
                public void Define(RigDraft rig) => rig.Group(Names.Arm);
            }
            """),
        new RigSnippet("rig.Group(Names.Arm);", More: """
            internal static class Names
            {
                private static readonly string part = "arm_group";
                public static string Arm => part;
            }

            public sealed class Crane : IRigDefinition
            {
                public void Define(RigDraft rig) => rig.Group(Names.Arm);
            }
            """));

    [Fact]
    public Task Blends_of_every_shape_are_repaired_at_once() => Repairs.Give(
        new RigSnippet(Limbs + """
            rig.Blend(arm).From(ik, {|CDY2001:s|}).From(fk, s);
            rig.Blend(arm).From(ik, s.Inverse).From(fk, {|CDY2001:s.Inverse|});
            rig.Blend(arm).From(ik, {|CDY2001:1|}).From(fk, s);
            rig.Blend(arm).From(other, {|CDY2001:s|}).From(third, s);
            """),
        new RigSnippet(Limbs + """
            rig.Blend(arm).From(ik, s.Inverse).From(fk, s);
            rig.Blend(arm).From(ik, s.Inverse).From(fk, s);
            rig.Blend(arm).From(ik, s.Inverse).From(fk, s);
            rig.Blend(arm).From(other, s.Inverse).From(third, s);
            """),
        steps: 4);

    // The right arm's is taken in the helper, for the left one as well, as long as nothing was repaired for that.
    [Fact]
    public Task A_blend_is_repaired_by_one_weight_only() => Repairs.Give(
        new RigSnippet(TwoLimbs + """
            Mix(rig, left, {|CDY2001:left.Amount|}, left.Amount);
            Mix(rig, right, right.Amount, right.Amount);
            """, Mix.Replace("toFk);", "{|CDY2001:toFk|});", StringComparison.Ordinal)),
        new RigSnippet(TwoLimbs + """
            Mix(rig, left, left.Amount.Inverse, left.Amount);
            Mix(rig, right, right.Amount, right.Amount.Inverse);
            """, Mix),
        steps: 2,
        rules: 2);

    [Fact]
    public Task Drives_are_repaired_at_once() => Repairs.Give(
        """
        var joints = Stage.Joints(rig, Side.Left);
        rig.Drive(joints.Shoulder).{|CDY3001:ByMatrix(rig.Control("shoulder"))|};
        rig.Drive(joints.Elbow).{|CDY3001:ByMatrix(rig.Control("elbow"))|};
        rig.Drive(rig.Group("arm_group")).ByMatrix(joints.Elbow);
        """,
        """
        var joints = Stage.Joints(rig, Side.Left);
        rig.Drive(joints.Shoulder).ByChannels(rig.Control("shoulder"));
        rig.Drive(joints.Elbow).ByChannels(rig.Control("elbow"));
        rig.Drive(rig.Group("arm_group")).ByMatrix(joints.Elbow);
        """,
        steps: 2);

    private const string TwoLimbs = """
        var left = Stage.Arm(rig, Side.Left, "mix");
        var right = Stage.Arm(rig, Side.Right, "ik");

        """;

    private const string Mix = "private static void Mix(RigDraft rig, Limb limb, Weight toIk, Weight toFk) => rig.Blend(limb.Chain).From(limb.Ik, toIk).From(limb.Fk, toFk);";

    private const string Limbs = """
        var (arm, ik, fk, hand, s) = Stage.Arm(rig, Side.Left);
        var other = arm.Copy("other");
        var third = arm.Copy("third");

        """;
}
