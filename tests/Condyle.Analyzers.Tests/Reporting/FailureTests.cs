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
            "This code fails whenever it runs, so there will be no rig: 'shoulder_left' is not below 'wrist_left' in the skeleton.",
            finding.GetMessage(),
            StringComparison.Ordinal);
        Assert.Equal("Chain(joints.Wrist, joints.Shoulder)", finding.Location.SourceTree!.GetText().ToString(finding.Location.SourceSpan));
    }

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
        Assert.StartsWith("The rig isn't read whole, so slips in it may go unseen: ", finding.GetMessage(), StringComparison.Ordinal);
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
}
