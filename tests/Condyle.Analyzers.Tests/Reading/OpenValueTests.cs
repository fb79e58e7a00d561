namespace Condyle.Analyzers.Tests.Reading;

/// <summary>For each kind of unknown: a slip that is found although something else is open, and a clean rig that must stay silent.</summary>
public class OpenValueTests
{
    private const string Config = """
        public static class Config
        {
            public static bool Flag => Environment.TickCount > 3;
            public static int Count => Environment.TickCount;
            public static string Word => Environment.MachineName;
            public static string[] Words => Environment.GetCommandLineArgs();
        }
        public enum Mode { Simple, Full }
        """;

    private const string Limb = """
        private static (Chain Arm, Copy Ik, Copy Fk, Control Hand) Limb(RigDraft rig)
        {
            var root = rig.Skeleton("test").Root("root");
            var mid = root.Child("mid", at: new Vector3(1, 0, 0.1f));
            var tip = mid.Child("tip", at: new Vector3(1, 0, -0.1f));
            var arm = rig.Chain(root, tip);
            return (arm, arm.Copy("ik"), arm.Copy("fk"), rig.Control("hand"));
        }
        """;

    [Fact]
    public async Task A_slip_under_an_unknown_flag_is_found() => Assert.Equal(
        ["CDY1001 \"crate\""],
        await Findings.In("""if (Config.Flag) rig.Group("crate"); else rig.Group("crate_group");""", more: Config));

    [Fact]
    public async Task The_same_unknown_is_decided_the_same_way_everywhere() => Assert.Equal(
        [],
        await Findings.In(
            """
            var flag = Config.Flag;
            var name = flag ? "crate_group" : "hook";
            if (flag) rig.Group(name); else rig.Control(name);
            """,
            more: Config));

    [Fact]
    public async Task Text_with_a_known_end_is_judged_by_it() => Assert.Equal(
        ["CDY1001 $\"{Config.Word}_grp\""],
        await Findings.In("""rig.Group($"{Config.Word}_group"); rig.Group($"{Config.Word}_grp"); rig.Group(Config.Word); rig.Group($"crate{Config.Word}");""", more: Config));

    [Fact]
    public async Task A_condition_on_an_unknown_number_is_read_both_ways() => Assert.Equal(
        ["CDY1001 \"many\"", "CDY1001 \"after\""],
        await Findings.In("""if (Config.Count > 3) rig.Group("many"); else rig.Group("few_group"); rig.Group("after");""", more: Config));

    [Fact]
    public async Task What_an_unknown_number_decided_is_open_afterwards() => Assert.Equal(
        [],
        await Findings.In("""var name = "crate"; if (Config.Count > 3) name = "crate_group"; else name = "hook_group"; rig.Group(name);""", more: Config));

    [Fact]
    public async Task A_source_that_may_be_missing_keeps_the_blend_silent() => Assert.Equal(
        [],
        await Findings.In(
            """
            var (arm, ik, fk, hand) = Limb(rig);
            var amount = hand.Switch("fk");
            var blend = rig.Blend(arm).From(ik, amount.Inverse);
            if (Config.Count > 3) blend.From(fk, amount);
            """,
            Limb,
            Config));

    [Fact]
    public async Task A_blend_that_is_whole_in_itself_is_judged_wherever_it_stands() => Assert.Equal(
        ["CDY2001 amount"],
        await Findings.In(
            """
            var (arm, ik, fk, hand) = Limb(rig);
            var amount = hand.Switch("fk");
            if (Config.Count > 3) rig.Blend(arm).From(ik, amount).From(fk, amount);
            """,
            Limb,
            Config));

    [Fact]
    public async Task A_loop_of_unknown_length_is_read_once_for_all_its_turns() => Assert.Equal(
        ["CDY1001 \"turn\""],
        await Findings.In(
            """
            var last = "first";
            foreach (var word in Config.Words)
            {
                rig.Group("turn");
                rig.Group($"{word}_group");
                last = word;
            }
            rig.Group(last);
            """,
            more: Config));

    [Fact]
    public async Task A_guard_that_may_return_early_hides_nothing_after_it() => Assert.Equal(
        ["CDY1001 \"late\""],
        await Findings.In("""if (Config.Count > 3) return; rig.Group("late");""", more: Config));

    [Fact]
    public async Task A_guard_that_throws_is_the_way_that_builds_no_rig() => Assert.Equal(
        ["CDY1001 name"],
        await Findings.In("""var name = "late"; if (Config.Count > 3) { name = "x_group"; throw new InvalidOperationException(); } if (name == "late") rig.Group(name);""", more: Config));

    [Fact]
    public async Task A_function_that_throws_where_an_unknown_is_not_what_it_looks_for_goes_on_with_what_it_returned() => Assert.Equal(
        ["CDY1001 \"late\""],
        await Findings.In(
            """
            string Find(string word) { if (Config.Count > 3) return word; throw new InvalidOperationException(word); }
            if (Find("crate") == "crate") rig.Group("late");
            """,
            more: Config));

    [Fact]
    public async Task Where_a_later_part_throws_the_ways_that_have_jumped_over_it_go_on() => Assert.Equal(
        ["CDY1001 \"late\""],
        await Findings.In(
            """
            var name = "late";
            foreach (var word in new[] { "a", "b" })
            {
                if (Config.Count > 3) break;
                if (Config.Word == "x") continue;
                name = "x_group";
                throw new InvalidOperationException();
            }
            rig.Group(name);
            """,
            more: Config));

    [Theory]
    [InlineData("crate_group", "hook_group")]
    [InlineData("crate_group", "hook", "hook")]
    [InlineData("crate", "hook_group", "crate")]
    public async Task What_may_be_thrown_and_caught_further_out_is_read_both_ways(string without, string caught, params string[] flagged) => Assert.Equal(
        [.. flagged.Select(name => $"CDY1001 \"{name}\"")],
        await Findings.In(
            $$"""
            void Check() { if (Config.Count > 3) return; throw new InvalidOperationException(); }
            string name;
            try { Check(); name = "{{without}}"; } catch (InvalidOperationException) { name = "{{caught}}"; }
            rig.Group(name);
            """,
            more: Config));

    [Theory]
    [InlineData("crate_group", "hook", "hook")]
    [InlineData("crate", "hook_group", "crate")]
    public async Task Unknown_code_may_fail_where_that_is_caught(string without, string caught, params string[] flagged) => Assert.Equal(
        [.. flagged.Select(name => $"CDY1001 \"{name}\"")],
        await Findings.In(
            $$"""
            var name = "{{caught}}";
            try { System.IO.File.ReadAllText("names.txt"); name = "{{without}}"; } catch (System.IO.IOException) { }
            rig.Group(name);
            """));

    [Fact]
    public async Task Where_a_failure_ends_the_program_all_the_same_nothing_is_read_twice() => Assert.Equal(
        ["CDY1001 \"crate\""],
        await Findings.In(
            """
            for (var i = 0; i < 40; i++)
            {
                try { System.IO.File.ReadAllText("names.txt"); }
                catch (System.IO.IOException failure) { Console.Error.WriteLine(failure); throw; }
            }
            rig.Group("crate");
            """));

    [Fact]
    public async Task A_loop_left_early_on_an_unknown_leaves_open_what_its_turns_wrote() => Assert.Equal(
        [],
        await Findings.In(
            """
            var name = "crate";
            foreach (var word in new[] { "a", "b" })
            {
                if (Config.Count > 3) break;
                name = word + "_group";
            }
            rig.Group(name);
            """,
            more: Config));

    [Fact]
    public async Task Items_that_an_iterator_may_hand_out_are_open_and_what_it_said_before_is_known() => Assert.Equal(
        ["CDY1001 \"crate\"", "CDY1001 \"after\""],
        await Findings.In(
            """
            IEnumerable<string> Names()
            {
                yield return "crate";
                if (Config.Count > 3) yield return "hook_group";
                yield return "rope_group";
            }
            foreach (var name in Names()) rig.Group(name);
            rig.Group("after");
            """,
            more: Config));

    [Fact]
    public async Task What_an_iterator_writes_after_an_item_that_may_be_is_open() => Assert.Equal(
        [],
        await Findings.In(
            """
            var name = "crate";
            IEnumerable<int> Turns()
            {
                while (Config.Flag && Config.Count > 3) yield return 1;
                name = "hook";
            }
            foreach (var turn in Turns()) if (turn > 0) break;
            rig.Group(name);
            """,
            more: Config));

    [Fact]
    public async Task A_switch_with_many_unknown_arms_is_read_to_its_end() => Assert.Equal(
        ["CDY1001 \"cc\"", "CDY1001 \"after\""],
        await Findings.In(
            """
            var name = Config.Word switch { "a" => "aa_group", "b" => "bb_group", "c" => "cc", "d" => "dd_group", "e" => "ee_group", "f" => "ff", "g" => "gg_group", "h" => "hh", "i" => "ii_group", _ => "crate" };
            rig.Group(name);
            rig.Group("after");
            """,
            more: Config));

    [Fact]
    public async Task An_unknown_place_may_be_anywhere_in_what_was_handed_over() => Assert.Equal(
        [],
        await Findings.In(
            """
            var items = new[] { "crate", "hook_group" };
            System.Runtime.CompilerServices.Unsafe.AddByteOffset(ref items[0], 0) = "rope_group";
            rig.Group(items[0]);
            """,
            more: Config));

    [Theory]
    [InlineData("if (Config.Count > 3) { foreach (var turn in Turns()) if (turn == 1) break; }")]
    [InlineData("int First() { foreach (var turn in Turns()) return turn; return 0; } if (Config.Count > 3) First(); else First();")]
    public async Task An_iterator_that_may_have_been_left_has_run_nobody_knows_what(string code) => Assert.DoesNotContain(
        "CDY1001 \"crate\"",
        await Findings.In(
            $$"""
            var name = "crate";
            IEnumerable<int> Turns() { try { yield return 1; yield return 2; } finally { name = "crate_group"; } }
            {{code}}
            rig.Group(name);
            """,
            more: Config));

    [Fact]
    public async Task Unknown_code_opens_what_it_is_handed_and_nothing_else() => Assert.Equal(
        ["CDY2001 other", "CDY1001 \"crate\""],
        await Findings.In(
            """
            var (arm, ik, fk, hand) = Limb(rig);
            var amount = hand.Switch("fk");
            var blend = rig.Blend(arm).From(ik, amount.Inverse);
            var boxed = new object[] { blend };
            GC.KeepAlive(boxed);
            var (leg, ik2, fk2, foot) = Limb(rig);
            var other = foot.Switch("fk");
            rig.Blend(leg).From(ik2, other).From(fk2, other);
            rig.Group("crate");
            """,
            Limb));

    [Fact]
    public async Task A_helper_that_no_definition_reaches_is_read_for_every_caller() => Assert.Equal(
        ["CDY1001 \"parts\"", "CDY3001 ByMatrix(control)"],
        await Findings.InFiles(("helpers.cs", Oracle.Usings + """
            public static class Helpers
            {
                public static void Add(RigDraft rig, string name, Joint joint, Control control, Group group, Side side, bool deep)
                {
                    rig.Group("parts");
                    rig.Group(name);
                    rig.Group($"{name}_{side}_group");
                    rig.Drive(joint).ByMatrix(control);
                    rig.Drive(group).ByMatrix(control);
                    if (deep) rig.Drive(joint).ByChannels(control);
                }
                public static void Mix(RigDraft rig, Node node, Node a, Node b, Switch s, Switch t)
                {
                    rig.Blend(node).From(a, s).From(b, t.Inverse);
                    rig.Blend(node).From(a, s).From(b, s.Inverse);
                }
            }
            """)));

    [Fact]
    public async Task A_helper_that_a_definition_reaches_is_judged_by_its_callers() => Assert.Equal(
        ["CDY1001 \"crate\""],
        await Findings.InFiles(
            ("helpers.cs", Oracle.Usings + "public static class Helpers { public static Group Add(RigDraft rig, string name) => rig.Group(name); }"),
            ("rig.cs", Oracle.Rig("""Helpers.Add(rig, "crate"); Helpers.Add(rig, "hook_group");"""))));

    [Fact]
    public async Task An_unknown_enum_is_read_each_way() => Assert.Equal(
        ["CDY1001 \"full\""],
        await Findings.In(
            """Build(rig, (Mode)Config.Count); Other(rig, Pick());""",
            """
            private static Mode Pick() => Enum.Parse<Mode>(Config.Word);
            private static void Build(RigDraft rig, Mode mode) { }
            private static void Other(RigDraft rig, Mode mode)
            {
                switch (mode)
                {
                    case Mode.Simple: rig.Group("simple_group"); break;
                    case Mode.Full: rig.Group("full"); break;
                }
            }
            """,
            Config));

    [Fact]
    public async Task A_rig_that_unknown_code_is_handed_is_said_not_to_be_read_whole() => Assert.Equal(
        ["CDY1001 \"crate\"", "CDY9002 Console.Out.WriteLine(rig)"],
        await Findings.In("""rig.Group("crate"); Console.Out.WriteLine(rig);"""));

    [Fact]
    public async Task A_query_whose_items_are_not_known_opens_what_was_made_and_goes_on() => Assert.Equal(
        ["CDY9002 new[] { \"a\", \"b\" }.Where(word => Config.Count > word.Length)", "CDY1001 \"late\""],
        await Findings.In("""foreach (var word in new[] { "a", "b" }.Where(word => Config.Count > word.Length)) rig.Group($"{word}_group"); rig.Group("late");""", more: Config));

    [Theory]
    [InlineData("DateTime.Now.Hour")]
    [InlineData("new Random().Next(5)")]
    [InlineData("System.IO.File.ReadAllLines(\"quay.txt\").Length")]
    [InlineData("Environment.ProcessorCount")]
    [InlineData("int.Parse(Environment.GetCommandLineArgs()[1])")]
    [InlineData("Guid.NewGuid().GetHashCode()")]
    public async Task A_number_from_outside_hides_no_slip_beside_it(string number) => Assert.Equal(
        ["CDY1001 $\"crate_{i}\"", "CDY1001 \"hook\""],
        await Findings.In($$"""var n = {{number}}; for (var i = 0; i < n; i++) rig.Group($"crate_{i}"); rig.Group("hook");"""));

    [Theory]
    [InlineData("DateTime.Now.Hour")]
    [InlineData("new Random().Next(5)")]
    [InlineData("System.IO.File.ReadAllLines(\"quay.txt\").Length")]
    [InlineData("Environment.ProcessorCount")]
    [InlineData("int.Parse(Environment.GetCommandLineArgs()[1])")]
    [InlineData("Guid.NewGuid().GetHashCode()")]
    public async Task What_a_number_from_outside_decides_is_no_slip(string number) => Assert.Equal(
        [],
        await Findings.In($$"""
            var n = {{number}};
            var names = new List<string> { "crate_group" };
            var last = "crate";
            for (var i = 0; i < n; i++) { names.Add($"crate_{i}_group"); last += "_group"; }
            foreach (var name in names) rig.Group(name);
            var (arm, ik, fk, hand) = Limb(rig);
            var amount = hand.Switch("fk");
            rig.Blend(arm).From(ik, n > 3 ? amount.Inverse : 1).From(fk, n > 3 ? amount : 0);
            rig.Group(last);
            """, Limb));

    [Fact]
    public async Task A_generic_type_of_the_users_keeps_known_what_is_known_beside_an_unknown() => Assert.Equal(
        ["CDY1001 \"crate\""],
        await Findings.In(
            """var kept = new Kept<string, int>("crate", Config.Count); rig.Group(kept.First); rig.Group($"{kept.Second}_group"); rig.Group(kept.Second > 2 ? "a_group" : "b_group");""",
            more: Config + "public sealed record Kept<A, B>(A First, B Second);"));

    [Fact]
    public async Task An_exception_that_may_be_thrown_is_followed_to_its_handler() => Assert.Equal(
        ["CDY1001 \"crate\"", "CDY1001 \"hook\""],
        await Findings.In(
            """var name = "crate_group"; try { if (Config.Count > 3) throw new InvalidOperationException("no"); } catch (InvalidOperationException) { name = "crate"; } rig.Group(name); rig.Group("hook");""",
            more: Config));
}
