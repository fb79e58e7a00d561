using Condyle.Analyzers.Tests.Reporting;

namespace Condyle.CodeFixes.Tests;

/// <summary>CDY1001: the suffix is appended to the text that is to blame.</summary>
public class NameRepairTests
{
    [Fact]
    public Task A_literal_gets_the_suffix() => Repairs.Give(
        new RigSnippet("""rig.Group({|CDY1001:"arm_left"|});"""),
        new RigSnippet("""rig.Group("arm_left_group");"""),
        title: "Rename to 'arm_left_group'");

    [Fact]
    public Task Every_kind_of_literal_gets_the_suffix_before_its_quotes() => Repairs.Give(
        """"
        rig.Group({|CDY1001:@"verbatim"|});
        rig.Group({|CDY1001:"""raw"""|});
        rig.Group({|CDY1001:$@"verbatim_{1}"|});
        rig.Group({|CDY1001:$"""raw_{1}"""|});
        rig.Group("joined_" + {|CDY1001:"left"|});
        rig.Group({|CDY1001:"quoted\""|});
        """",
        """"
        rig.Group(@"verbatim_group");
        rig.Group("""raw_group""");
        rig.Group($@"verbatim_{1}_group");
        rig.Group($"""raw_{1}_group""");
        rig.Group("joined_" + "left_group");
        rig.Group("quoted\"_group");
        """",
        steps: 6);

    [Fact]
    public Task An_interpolated_name_gets_the_suffix_at_its_end() => Repairs.Give(
        """
        var prefix = "arm";
        foreach (var side in Side.Both)
            rig.Group({|CDY1001:$"{prefix}_{side}"|}).Under(rig.Control($"{prefix}_root_{side}"));
        """,
        """
        var prefix = "arm";
        foreach (var side in Side.Both)
            rig.Group($"{prefix}_{side}_group").Under(rig.Control($"{prefix}_root_{side}"));
        """);

    [Fact]
    public Task A_literal_at_the_caller_of_a_helper_gets_the_suffix() => Repairs.Give(
        new RigSnippet(
            """
            Parts(rig, {|CDY1001:"arm"|});
            Parts(rig, "leg_group");
            """,
            """private static Group Parts(RigDraft rig, string name) => rig.Group($"{name}");"""),
        new RigSnippet(
            """
            Parts(rig, "arm_group");
            Parts(rig, "leg_group");
            """,
            """private static Group Parts(RigDraft rig, string name) => rig.Group($"{name}");"""));

    [Fact]
    public Task A_literal_in_a_helpers_file_gets_the_suffix_there() => Repairs.Give(
        new RigSnippet("Parts.Of(rig);", More: """internal static class Parts { public static Group Of(RigDraft rig) => rig.Group({|CDY1001:"parts"|}); }"""),
        new RigSnippet("Parts.Of(rig);", More: """internal static class Parts { public static Group Of(RigDraft rig) => rig.Group("parts_group"); }"""));

    [Fact]
    public Task A_reassigned_variable_gets_the_suffix_at_its_last_value() => Repairs.Give(
        """
        var name = "arm";
        rig.Control(name);
        name = {|CDY1001:"leg"|};
        rig.Group(name);
        """,
        """
        var name = "arm";
        rig.Control(name);
        name = "leg_group";
        rig.Group(name);
        """);

    [Fact]
    public Task A_constant_field_gets_the_suffix_at_its_value() => Repairs.Give(
        new RigSnippet("rig.Group(Arm);", """private const string Arm = {|CDY1001:"arm"|};"""),
        new RigSnippet("rig.Group(Arm);", """private const string Arm = "arm_group";"""));

    [Fact]
    public Task The_wrong_arm_of_a_conditional_gets_the_suffix() => Repairs.Give(
        """
        foreach (var side in Side.Both)
            rig.Group(side == Side.Left ? {|CDY1001:"arm_left"|} : "arm_right_group");
        """,
        """
        foreach (var side in Side.Both)
            rig.Group(side == Side.Left ? "arm_left_group" : "arm_right_group");
        """);

    [Fact]
    public Task A_name_that_a_helper_makes_gets_the_suffix_in_the_helper() => Repairs.Give(
        new RigSnippet("rig.Group(NameOf(\"arm\", Side.Left));", """private static string NameOf(string part, Side side) => {|CDY1001:$"{part}_{side}"|};"""),
        new RigSnippet("rig.Group(NameOf(\"arm\", Side.Left));", """private static string NameOf(string part, Side side) => $"{part}_{side}_group";"""));

    [Fact]
    public Task A_name_that_the_framework_puts_together_gets_the_suffix_where_it_is_used() => Repairs.Give(
        """
        rig.Group({|CDY1001:string.Join("_", "arm", Side.Left)|});
        rig.Group({|CDY1001:nameof(Docker)|});
        string? none = null;
        rig.Group({|CDY1001:none ?? "hip left".Replace(' ', '_')|});
        """,
        """
        rig.Group(string.Join("_", "arm", Side.Left) + "_group");
        rig.Group(nameof(Docker) + "_group");
        string? none = null;
        rig.Group((none ?? "hip left".Replace(' ', '_')) + "_group");
        """,
        steps: 3);

    [Fact]
    public Task A_text_that_a_control_is_named_by_as_well_gets_the_suffix_where_the_group_is_named() => Repairs.Give(
        """
        var name = "arm";
        rig.Control(name);
        rig.Group({|CDY1001:name|});
        """,
        """
        var name = "arm";
        rig.Control(name);
        rig.Group(name + "_group");
        """);

    [Theory]
    [InlineData("rig.Limb(arm.Chain, name, Side.Left, world, systems, world);")]
    [InlineData("rig.Limb(arm.Chain, \"limb\", Side.Left, world, systems, world, new LimbOptions { Goal = name });")]
    public Task A_text_that_a_recipe_is_given_gets_the_suffix_where_the_group_is_named(string recipe) => Repairs.Give(
        $$"""
        var (arm, world, systems) = (Stage.Arm(rig, Side.Left), rig.Control("world"), rig.Group("systems_group"));
        var name = "arm";
        {{recipe}}
        rig.Group({|CDY1001:name|});
        """,
        $$"""
        var (arm, world, systems) = (Stage.Arm(rig, Side.Left), rig.Control("world"), rig.Group("systems_group"));
        var name = "arm";
        {{recipe}}
        rig.Group(name + "_group");
        """);

    [Fact]
    public Task A_text_that_another_rig_uses_rightly_gets_the_suffix_where_it_is_used_wrongly() => Repairs.Give(
        new RigSnippet("rig.Group({|CDY1001:Names.Arm|});", More: SharedName),
        new RigSnippet("rig.Group(Names.Arm + \"_group\");", More: SharedName));

    [Fact]
    public Task A_text_that_names_other_things_at_its_head_gets_the_suffix_at_the_group_only() => Repairs.Give(
        """
        foreach (var part in new[] { "arm", "leg" })
        {
            rig.Control($"{part}_root");
            rig.Group({|CDY1001:$"{part}"|});
        }
        """,
        """
        foreach (var part in new[] { "arm", "leg" })
        {
            rig.Control($"{part}_root");
            rig.Group($"{part}_group");
        }
        """);

    [Fact]
    public Task A_text_that_the_code_looks_at_gets_the_suffix_where_it_is_used() => Repairs.Give(
        """
        foreach (var part in new[] { "arm", "leg" })
        {
            rig.Group({|CDY1001:part|});
            if (part == "arm")
                rig.Control("hand");
        }
        """,
        """
        foreach (var part in new[] { "arm", "leg" })
        {
            rig.Group(part + "_group");
            if (part == "arm")
                rig.Control("hand");
        }
        """);

    [Fact]
    public Task Text_and_call_that_are_right_for_others_are_left_alone() => Repairs.AreNotOffered(new RigSnippet(
        """
        foreach (var part in new[] { "arm", "leg_group" })
            Parts(rig, part + "");
        """,
        """private static Group Parts(RigDraft rig, string name) => rig.{|CDY1001:Group(name)|};"""));

    [Fact]
    public Task A_constant_that_is_part_of_another_name_is_left_alone() => Repairs.Give(
        new RigSnippet(
            """
            rig.Group({|CDY1001:Arm|});
            rig.Control(Arm + "_root");
            """,
            """private const string Arm = "arm";"""),
        new RigSnippet(
            """
            rig.Group(Arm + "_group");
            rig.Control(Arm + "_root");
            """,
            """private const string Arm = "arm";"""));

    [Fact]
    public Task A_constant_that_another_constant_is_made_of_is_left_alone() => Repairs.Give(
        new RigSnippet(
            """
            rig.Group({|CDY1001:Arm|});
            rig.Control(Root);
            Hand(rig);
            """,
            """
            private const string Arm = "arm";
            private const string Root = $"{Arm}_root";
            private static void Hand(RigDraft rig, string name = Root + "_hand") => rig.Control(name);
            """),
        new RigSnippet(
            """
            rig.Group(Arm + "_group");
            rig.Control(Root);
            Hand(rig);
            """,
            """
            private const string Arm = "arm";
            private const string Root = $"{Arm}_root";
            private static void Hand(RigDraft rig, string name = Root + "_hand") => rig.Control(name);
            """));

    [Fact]
    public Task A_text_that_unknown_code_is_handed_is_left_alone() => Repairs.Give(
        """
        var part = "arm";
        rig.Group({|CDY1001:part|});
        if (System.IO.File.Exists(part))
            rig.Control("hand");
        """,
        """
        var part = "arm";
        rig.Group(part + "_group");
        if (System.IO.File.Exists(part))
            rig.Control("hand");
        """);

    private const string SharedName = """
        internal static class Names
        {
            private static readonly string part = "arm";
            public static string Arm => part;
        }

        public sealed class Crane : IRigDefinition
        {
            public void Define(RigDraft rig) => rig.Control(Names.Arm);
        }
        """;
}
