namespace Condyle.Analyzers.Tests.Reading;

/// <summary>A function that code which isn't known was handed may be kept, and run later with what its variables hold by then.</summary>
public class OpenFunctionTests
{
    [Theory]
    [InlineData("var name = \"a\"; var timer = new System.Threading.Timer(_ => name = \"x_group\"); name = \"a\"; timer.Change(1, 2); rig.Group(name);")]
    [InlineData("var name = \"a\"; var all = new System.ComponentModel.BindingList<int>(); all.ListChanged += (_, _) => name = \"x_group\"; name = \"a\"; all.Add(1); rig.Group(name);")]
    [InlineData("var names = new List<string>(); var timer = new System.Threading.Timer(_ => names[0] = \"x_group\"); names = [\"a\"]; timer.Dispose(); rig.Group(names[0]);")]
    [InlineData("Control none = default; System.Text.Json.JsonSerializer.Serialize(new[] { none }); rig.Group(\"a_group\");")]
    public async Task What_it_may_have_changed_by_then_is_not_known(string code) => Assert.Empty(await Findings.In(code));

    [Theory]
    [InlineData("var timer = new System.Threading.Timer(_ => Console.WriteLine()); rig.Group(\"a\");")]
    [InlineData("AppDomain.CurrentDomain.ProcessExit += (_, _) => Console.WriteLine(\"done\"); rig.Group(\"a\");")]
    [InlineData("var made = System.Text.RegularExpressions.Regex.Replace(\"arm\", \"a\", found => found.Value.ToUpperInvariant()); rig.Group(\"a\");")]
    [InlineData("var name = \"a\"; var timer = new System.Threading.Timer(_ => name = \"x_group\"); name = \"a\"; rig.Group(name);")]
    public async Task One_that_can_not_get_at_the_rig_leaves_it_whole(string code) => Assert.Equal("CDY1001 \"a\"", Assert.Single(await Findings.In(code)));

    [Theory]
    [InlineData("var timer = new System.Threading.Timer(_ => rig.Group(\"a_group\"));")]
    [InlineData("var watcher = new System.IO.FileSystemWatcher(); watcher.Changed += (_, _) => rig.Group(\"a_group\");")]
    [InlineData("var hook = rig.Control(\"hook\"); var timer = new System.Threading.Timer(_ => hook.Lock(Channels.Move));")]
    public async Task One_that_can_leaves_it_open(string code) => Assert.Contains(await Findings.In(code), found => found.StartsWith("CDY9002", StringComparison.Ordinal));

    /// <summary>A control that is made after the function was handed on may still be said to move something by it.</summary>
    [Fact]
    public async Task What_its_variables_hold_later_may_be_said_of()
    {
        const string before = "var joint = rig.Skeleton(\"boom\").Root(\"root\"); rig.Drive(joint).ByChannels(rig.Control(\"body\").PlacedAt(joint)); Control hook = default;";
        const string after = "hook = rig.Control(\"hook\").PlacedAt(joint);";
        Assert.Contains(await All(before + after), id => id == "CDY5006");
        Assert.DoesNotContain(await All(before + "var timer = new System.Threading.Timer(_ => rig.Drive(joint).ByChannels(hook));" + after), id => id == "CDY5006");
    }

    [Fact]
    public async Task A_definition_that_is_made_in_many_ways_is_read_in_some_of_them()
    {
        var types = new[] { "int", "string", "bool", "long", "double", "float", "char", "byte", "short", "uint" };
        var makers = string.Join("\n", types.Select((type, index) => $"public TestRig({type} given) => name = \"{(char)('a' + index)}{(index is 2 or 9 ? "" : "_group")}\";"));
        var found = await Findings.In("rig.Group(name);", "private readonly string name;\n" + makers, $"public static class Builds {{ public static object[] All() => [{string.Join(", ", types.Select(type => $"Rig.Build(new TestRig(default({type})!))"))}]; }}");
        Assert.Equal(["CDY9002 Define", "CDY1001 \"c\""], found);
    }

    private static async Task<IEnumerable<string>> All(string code) =>
        (await Findings.Diagnostics(Condyle.Tests.Shared.CompiledCode.Compile(("rig.cs", Oracle.Rig(code))))).Select(found => found.Id);
}
