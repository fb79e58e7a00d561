namespace Condyle.Analyzers.Tests.Reporting;

/// <summary>What isn't known elsewhere silences no slip that is, and nothing is flagged that only may be one.</summary>
public class OpenFactTests
{
    private const string Arm = "var (arm, ik, fk, hand, amount) = Stage.Arm(rig, Side.Left);\n";

    private const string Slips = """
        rig.Group({|CDY1001:"arm_left"|});
        rig.Blend(arm).From(ik, {|CDY2001:amount|}).From(fk, amount);
        rig.Drive(arm.Root).{|CDY3001:ByMatrix(hand)|};
        """;

    [Fact]
    public Task An_unknown_condition_elsewhere_silences_nothing() => RigSnippet.FindsByReading(Arm + """
        if (Environment.Is64BitProcess)
            rig.Control("cable");
        """ + "\n" + Slips);

    [Fact]
    public Task Both_sides_of_an_unknown_condition_are_read() => RigSnippet.FindsByReading("""
        if (Environment.Is64BitProcess)
            rig.Group({|CDY1001:"hook"|});
        else
            rig.Group({|CDY1001:"sling"|});
        """);

    [Fact]
    public Task A_value_from_the_settings_elsewhere_silences_nothing() => RigSnippet.FindsByReading(Arm + """
        var fingers = int.Parse(Environment.GetEnvironmentVariable("FINGERS") ?? "5");
        for (var i = 0; i < fingers; i++)
            rig.Control($"finger_{i}");
        """ + "\n" + Slips);

    [Fact]
    public Task Code_that_is_not_read_and_is_handed_something_else_silences_nothing() => RigSnippet.FindsByReading(Arm + """
        GC.KeepAlive(rig.Control("cable"));
        """ + "\n" + Slips);

    [Fact]
    public Task A_slip_inside_a_loop_of_unknown_length_is_flagged_once() => RigSnippet.FindsByReading("""
        foreach (var name in System.IO.File.ReadAllLines("parts.txt"))
            rig.Group({|CDY1001:$"{name}_left"|});
        """);

    [Fact]
    public Task A_name_that_may_end_rightly_is_left_alone() => RigSnippet.FindsByReading("""
        var part = Environment.GetEnvironmentVariable("PART");
        rig.Group($"arm_{part}");
        rig.Group($"{part}_group");
        rig.Group(part + "oup");
        """);

    [Fact]
    public Task A_name_that_ends_wrongly_where_none_is_given_is_flagged() => RigSnippet.FindsByReading("""
        var part = Environment.GetEnvironmentVariable("PART");
        rig.Group(part ?? {|CDY1001:"arm"|});
        """);

    [Fact]
    public Task A_name_that_ends_rightly_where_none_is_given_is_left_alone() => RigSnippet.FindsByReading("""
        var part = Environment.GetEnvironmentVariable("PART");
        rig.Group(part ?? "arm_group");
        rig.Group($"{part ?? "arm"}_group");
        """);

    [Fact]
    public Task A_name_that_ends_wrongly_whatever_it_begins_with_is_flagged() => RigSnippet.FindsByReading("""
        var part = Environment.GetEnvironmentVariable("PART");
        rig.Group({|CDY1001:$"{part}_left"|});
        rig.Group(part + {|CDY1001:"_groups"|});
        """);

    [Fact]
    public Task A_weight_that_is_not_known_is_left_alone() => RigSnippet.FindsByReading(Arm + """
        var share = float.Parse(Environment.GetEnvironmentVariable("SHARE") ?? "0.5");
        rig.Blend(arm).From(ik, share).From(fk, 0.5f);
        rig.Blend(arm).From(ik, amount).From(fk, amount * share);
        """);

    [Fact]
    public Task A_source_that_may_be_missing_leaves_a_blend_alone() => RigSnippet.FindsByReading(Arm + """
        var blend = rig.Blend(arm).From(ik, amount);
        foreach (var name in System.IO.File.ReadAllLines("sources.txt"))
            blend.From(fk, amount.Inverse);
        """);

    [Fact]
    public Task A_blend_that_unknown_code_was_handed_is_left_alone() => RigSnippet.FindsByReading(Arm + """
        var blend = rig.Blend(arm).From(ik, amount);
        GC.KeepAlive(blend);
        """);

    [Fact]
    public Task A_slip_on_one_way_through_is_flagged() => RigSnippet.FindsByReading(Arm + """
        var byMatrix = Environment.Is64BitProcess;
        if (byMatrix)
            rig.Drive(arm.Root).{|CDY3001:ByMatrix(hand)|};
        else
            rig.Drive(arm.Root).ByChannels(hand);
        rig.Blend(arm).{|CDY2001:From(ik, byMatrix ? amount : amount.Inverse)|}.From(fk, amount);
        """);

    [Fact]
    public Task The_same_unknown_condition_goes_the_same_way_twice() => RigSnippet.FindsByReading(Arm + """
        var swapped = Environment.Is64BitProcess;
        rig.Blend(arm).From(ik, swapped ? amount : amount.Inverse).From(fk, swapped ? amount.Inverse : amount);
        """);

    [Fact]
    public Task A_node_of_which_the_kind_is_not_known_is_left_alone() => RigSnippet.FindsByReading(
        "",
        more: """
        public static class Following
        {
            public static void Any(RigDraft rig, Node node, Control control) => rig.Drive(node).ByMatrix(control);
            public static void Named(RigDraft rig, string name) => rig.Group(name);
            public static void Weighted(RigDraft rig, Chain chain, Copy ik, Copy fk, Weight first, Weight second) => rig.Blend(chain).From(ik, first).From(fk, second);
        }
        """);

    [Fact]
    public Task A_helper_that_nobody_calls_yet_is_flagged_for_what_holds_for_every_caller() => RigSnippet.FindsByReading(
        "",
        more: """
        public static class Parts
        {
            public static void Limb(RigDraft rig, string name, Side side) => rig.Group({|CDY1001:$"{name}_{side}"|});
            public static void Mixed(RigDraft rig, Chain chain, Copy ik, Copy fk, Switch amount) => rig.Blend(chain).From(ik, {|CDY2001:amount|}).From(fk, amount);
        }
        """);
}
