using Microsoft.CodeAnalysis;

namespace Condyle.Analyzers.Tests.Reporting;

/// <summary>CDY9001 and CDY9002: rig code that fails, and rig code that isn't read whole.</summary>
public class FailureTests
{
    [Fact]
    public async Task Code_that_always_throws_is_flagged_with_the_words_of_the_exception()
    {
        var finding = Assert.Single(await FrontEnds.Read(new RigSnippet("""
            var joints = Stage.Joints(rig, Side.Left);
            rig.Chain(joints.Wrist, joints.Shoulder);
            """).PlainFiles));
        Assert.Equal("CDY9001", finding.Id);
        Assert.StartsWith(
            "Whichever way the rig 'Docker' goes, it fails here and can't be built, nor checked as a whole: 'shoulder_left' is not below 'wrist_left' in the skeleton.",
            finding.GetMessage(),
            StringComparison.Ordinal);
        Assert.Equal("Chain(joints.Wrist, joints.Shoulder)", finding.Location.SourceTree!.GetText().ToString(finding.Location.SourceSpan));
    }

    [Theory]
    [InlineData("", "CDY1001 CDY2006")]
    [InlineData("throw new InvalidOperationException();", "CDY1001 CDY9001")]
    public async Task What_needs_the_whole_rig_waits_until_there_is_one(string end, string found) => Assert.Equal(
        found,
        string.Join(" ", (await FrontEnds.Read(new RigSnippet($"""
            rig.Group("arm");
            rig.Control("hand").Switch("fk");
            {end}
            """).PlainFiles)).Select(finding => finding.Id).Order().Where(id => id is "CDY1001" or "CDY2006" or "CDY9001")));

    [Theory]
    [InlineData("rig.{|CDY9001:Control(null!)|};")]
    [InlineData("string name = null!; rig.Control(\"hand\").{|CDY9001:Switch(name)|};")]
    [InlineData("rig.Control(\"world\").{|CDY9001:Choice(\"space\", [\"one\", null!])|};")]
    public Task A_name_of_nothing_is_refused(string code) => RigSnippet.FindsByReading(code);

    [Fact]
    public Task Code_that_throws_on_some_ways_only_is_left_alone() => RigSnippet.FindsByReading("""
        if (Environment.Is64BitProcess)
            throw new InvalidOperationException("Only small machines.");
        rig.Control("world");
        """);

    [Fact]
    public Task Building_another_rig_on_the_way_is_no_failure() => RigSnippet.FindsByReading("""
        var crane = new Crane();
        var other = Rig.Examine(crane);
        rig.Group(other.Name + {|CDY1001:"_parts"|});
        rig.Group(crane.Hook);
        rig.Group({|CDY1001:"arm"|});
        """,
        """
        private sealed class Crane : IRigDefinition
        {
            public string Hook { get; private set; } = "hook";

            public void Define(RigDraft rig) => Hook = "hook_group";
        }
        """);

    [Fact]
    public Task Slips_before_the_failure_are_flagged_too() => RigSnippet.FindsByReading("""
        rig.Group({|CDY1001:"arm"|});
        Fail();
        """,
        """private static void Fail() => {|CDY9001:throw new InvalidOperationException("It fails.")|};""");

    [Fact]
    public async Task Code_that_is_not_read_is_flagged_with_the_reason()
    {
        var finding = Assert.Single(await FrontEnds.Read(new RigSnippet("GC.KeepAlive(rig);").PlainFiles));
        Assert.Equal("CDY9002", finding.Id);
        Assert.StartsWith("Slips in the rig 'Docker' may go unseen, as it isn't read whole: ", finding.GetMessage(), StringComparison.Ordinal);
    }

    [Fact]
    public Task Slips_beside_code_that_is_not_read_are_flagged_too() => RigSnippet.FindsByReading("""
        rig.Group({|CDY1001:"arm"|});
        {|CDY9002:GC.KeepAlive(rig)|};
        rig.Group({|CDY1001:"leg"|});
        """);

    [Fact]
    public Task A_value_that_is_not_known_is_no_gap() => RigSnippet.FindsByReading("""
        rig.Control($"crate_{Environment.ProcessId}");
        """);

    [Fact]
    public async Task Each_rig_that_a_shared_check_refuses_is_named_with_the_calls_that_led_there()
    {
        var found = await FrontEnds.Read([
            .. new RigSnippet("Parts.Add(rig, \"\");", More: """
                internal static class Parts
                {
                    public static void Add(RigDraft rig, string name)
                    {
                        Require(name);
                        rig.Control(name);
                    }

                    private static void Require(string name)
                    {
                        if (name.Length == 0)
                            throw new ArgumentException("A part needs a name.");
                    }
                }
                """).PlainFiles,
            ("/0/crane.cs", "public sealed class Crane : IRigDefinition { public void Define(RigDraft rig) => Parts.Add(rig, string.Empty); }"),
            ("/0/gull.cs", "public sealed class Gull : IRigDefinition { public void Define(RigDraft rig) => Parts.Add(rig, \"wing\"); }"),
        ]);
        var failures = found.OrderBy(finding => finding.GetMessage(), StringComparer.Ordinal).ToList();
        Assert.All(failures, finding => Assert.Equal("CDY9001", finding.Id));
        Assert.Equal(
            ["Whichever way the rig 'Crane' goes, it fails here and can't be built, nor checked as a whole: A part needs a name.", "Whichever way the rig 'Docker' goes, it fails here and can't be built, nor checked as a whole: A part needs a name."],
            failures.Select(finding => finding.GetMessage()));
        Assert.Equal(["Parts.Add(rig, string.Empty)", "Require(name)"], failures[0].AdditionalLocations.Select(TextAt));
        Assert.Equal(["Parts.Add(rig, \"\")", "Require(name)"], failures[1].AdditionalLocations.Select(TextAt));
    }

    [Theory]
    [InlineData("GC.KeepAlive(rig);", "'KeepAlive' is handed the rig, but its source isn't part of this project")]
    [InlineData("Action<RigDraft> part = Environment.Is64BitProcess ? One : Other; part(rig);", null)]
    [InlineData("Chosen?.Invoke(rig);", "a delegate is handed the rig, but which code it runs isn't known")]
    public async Task What_was_not_read_is_said_in_words(string body, string? reason)
    {
        var found = await FrontEnds.Read(new RigSnippet(body, """
            private static void One(RigDraft rig) => rig.Control("one");
            private static void Other(RigDraft rig) => rig.Control("other");
            private static Action<RigDraft>? Chosen => Delegate.CreateDelegate(typeof(Action<RigDraft>), typeof(Docker), nameof(One)) as Action<RigDraft>;
            """).PlainFiles);
        Assert.Equal(reason is null ? [] : [$"Slips in the rig 'Docker' may go unseen, as it isn't read whole: {reason}."], found.Select(finding => finding.GetMessage()));
    }

    [Fact]
    public async Task A_loader_that_may_fail_in_many_ways_hides_nothing_of_the_rig_that_it_does_not_name()
    {
        var found = await FrontEnds.Read(new RigSnippet("""
            var reach = 0.4f;
            var prefix = "arm";
            try
            {
                foreach (var line in System.IO.File.ReadAllLines("crane.settings"))
                {
                    var parts = line.Split('=');
                    switch (parts[0].Trim())
                    {
                        case "reach": reach = float.Parse(parts[1]); break;
                        case "prefix": prefix = parts[1].Trim(); break;
                    }
                }
            }
            catch (System.IO.IOException)
            {
                rig.Group("unread");
            }
            catch (FormatException)
            {
                rig.Group("malformed");
            }

            rig.Group(prefix + "_parts");
            rig.Group("hook");
            """).PlainFiles);
        Assert.Equal(["\"_parts\"", "\"hook\"", "\"malformed\"", "\"unread\""], found.Where(finding => finding.Id == "CDY1001").Select(finding => TextAt(finding.Location)).Order(StringComparer.Ordinal));
        var cut = Assert.Single(found, finding => finding.Id != "CDY1001");
        Assert.Equal(
            "Slips in the rig 'Docker' may go unseen, as it isn't read whole: code inside a 'try' may fail in so many ways from here on that not all of them are read.",
            cut.GetMessage());
    }

    [Fact]
    public async Task Code_of_which_some_way_was_not_gone_is_not_said_to_fail_always()
    {
        var calls = string.Concat(Enumerable.Range(0, 12).Select(i => $"try {{ Console.Write(Environment.GetEnvironmentVariable(\"A{i}\")); }} catch (InvalidOperationException) {{ }}\n"));
        var found = await FrontEnds.Read(new RigSnippet(calls + "throw new InvalidOperationException(\"It fails.\");").PlainFiles);
        Assert.Equal("CDY9002", Assert.Single(found).Id);
    }

    private static string TextAt(Location place) => place.SourceTree!.GetText().ToString(place.SourceSpan);
}
