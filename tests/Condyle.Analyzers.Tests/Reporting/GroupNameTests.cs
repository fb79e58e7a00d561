namespace Condyle.Analyzers.Tests.Reporting;

/// <summary>CDY1001, flagged at the text that is to blame.</summary>
public class GroupNameTests
{
    [Fact]
    public Task A_literal_is_flagged() => RigSnippet.Finds("""
        rig.Group({|CDY1001:"arm_left"|});
        rig.Group("leg_left_group");
        """);

    [Fact]
    public Task A_named_argument_is_flagged_at_its_value() => RigSnippet.Finds("""
        rig.Group(name: {|CDY1001:"arm_left"|});
        """);

    [Fact]
    public Task A_literal_that_a_helper_turns_into_a_group_is_flagged_at_the_caller() => RigSnippet.Finds(
        """
        Parts(rig, {|CDY1001:"arm_left"|});
        Parts(rig, "leg_left_group");
        """,
        "private static Group Parts(RigDraft rig, string name) => rig.Group(name);");

    [Fact]
    public Task A_helper_in_another_file_makes_no_difference() => RigSnippet.Finds(
        """
        Parts.Of(rig, {|CDY1001:"arm_left"|});
        Parts.Of(rig, "leg_left_group");
        """,
        more: "internal static class Parts { public static Group Of(RigDraft rig, string name) => rig.Group(name); }");

    [Fact]
    public Task A_literal_of_a_helper_in_another_file_is_flagged_there() => RigSnippet.Finds(
        """
        Parts.Of(rig);
        Parts.Of(rig);
        """,
        more: """internal static class Parts { public static Group Of(RigDraft rig) => rig.Group({|CDY1001:"parts"|}); }""");

    [Fact]
    public Task An_extension_method_of_another_file_is_followed() => RigSnippet.Finds(
        "rig.Parts();",
        more: """internal static class Words { public static Group Parts(this RigDraft rig) => rig.Group({|CDY1001:"parts"|}); }""");

    [Fact]
    public Task An_extension_block_of_another_file_is_followed() => RigSnippet.Finds(
        "rig.Parts();",
        more: """internal static class Words { extension(RigDraft rig) { public Group Parts() => rig.Group({|CDY1001:"parts"|}); } }""");

    [Fact]
    public Task A_loop_gives_one_finding_for_all_its_turns() => RigSnippet.Finds("""
        foreach (var side in Side.Both)
        {
            rig.Group({|CDY1001:$"arm_{side}"|});
            for (var i = 1; i <= 3; i++)
                rig.Group({|CDY1001:$"finger_{i}_{side}"|});
        }
        """);

    [Fact]
    public Task An_interpolated_name_is_flagged_whole() => RigSnippet.Finds("""
        var prefix = "arm";
        foreach (var side in Side.Both)
        {
            rig.Group({|CDY1001:$"{prefix}_{side}"|});
            rig.Group($"{prefix}_{side}_group");
        }
        """);

    [Fact]
    public Task A_name_that_only_passes_through_an_interpolation_is_flagged_at_its_literal() => RigSnippet.Finds(
        """
        Parts(rig, {|CDY1001:"arm"|});
        Parts(rig, {|CDY1001:"leg"|});
        Parts(rig, "head_group");
        """,
        """private static Group Parts(RigDraft rig, string name) => rig.Group($"{name}");""");

    [Fact]
    public Task The_last_value_of_a_variable_counts() => RigSnippet.Finds("""
        var name = "arm_group";
        rig.Group(name);
        name = {|CDY1001:"leg"|};
        rig.Group(name);
        name = "hip";
        name += {|CDY1001:"_left"|};
        rig.Group(name);
        """);

    [Fact]
    public Task A_constant_of_the_class_is_flagged_at_its_value() => RigSnippet.Finds(
        "rig.Group(Arm);",
        """private const string Arm = {|CDY1001:"arm"|};""");

    [Fact]
    public Task A_constant_that_other_files_see_is_flagged_where_it_is_used() => RigSnippet.Finds(
        """
        rig.Group({|CDY1001:Names.Arm|});
        rig.Group(Names.Leg);
        """,
        more: """internal static class Names { public const string Arm = "arm"; public const string Leg = "leg_group"; }""");

    [Fact]
    public Task Of_two_alternatives_the_one_that_is_taken_is_flagged() => RigSnippet.Finds("""
        foreach (var side in Side.Both)
        {
            rig.Group(side == Side.Left ? {|CDY1001:"arm_left"|} : "arm_right_group");
            rig.Group(side == Side.Left ? {|CDY1001:"leg_left"|} : {|CDY1001:"leg_right"|});
        }
        """);

    [Fact]
    public Task A_name_that_a_helper_makes_is_flagged_where_it_is_made() => RigSnippet.Finds(
        """
        foreach (var side in Side.Both)
            rig.Group(NameOf("arm", side));
        """,
        """private static string NameOf(string part, Side side) => {|CDY1001:$"{part}_{side}"|};""");

    [Fact]
    public Task A_name_that_the_framework_puts_together_is_flagged_where_it_is_used() => RigSnippet.Finds("""
        foreach (var side in Side.Both)
            rig.Group({|CDY1001:string.Join("_", "arm", side)|});
        rig.Group({|CDY1001:nameof(Docker)|});
        """);

    [Fact]
    public Task Every_kind_of_literal_is_flagged() => RigSnippet.Finds(
        """"
        rig.Group({|CDY1001:@"verbatim"|});
        rig.Group({|CDY1001:"""raw"""|});
        rig.Group({|CDY1001:$@"verbatim_{1}"|});
        rig.Group({|CDY1001:$"""raw_{1}"""|});
        rig.Group("joined_" + {|CDY1001:"left"|});
        """");

    [Fact]
    public Task Names_in_collections_and_records_are_flagged_where_they_are_written() => RigSnippet.Finds(
        """
        foreach (var name in new[] { {|CDY1001:"arm"|}, "leg_group" })
            rig.Group(name);
        List<string> names = [{|CDY1001:"hip"|}, "head_group"];
        var groups = names.Select(rig.Group).ToList();
        foreach (var part in new[] { new Part({|CDY1001:"hand"|}), new Part("foot_group") })
            rig.Group(part.Name);
        """,
        more: "internal sealed record Part(string Name);");

    [Fact]
    public Task Lambdas_and_local_functions_are_followed() => RigSnippet.Finds("""
        Func<string, Group> make = name => rig.Group(name);
        make({|CDY1001:"arm"|});
        Parts({|CDY1001:"leg"|});
        Group Parts(string name) => rig.Group(name);
        """);

    [Fact]
    public Task What_only_looks_alike_is_left_alone() => RigSnippet.Finds(
        """
        const string tail = "_group";
        rig.Group("arm" + tail);
        rig.Group($"leg{tail}");
        rig.Group(Suffixed("hip"));
        rig.Control("arm");
        rig.Label("arm_label", "Arm");
        rig.Control("hand").Switch("group");
        Stage.Joints(rig, Side.Left);
        """,
        """private static string Suffixed(string name) => name.EndsWith("_group", StringComparison.Ordinal) ? name : name + "_group";""");
}
