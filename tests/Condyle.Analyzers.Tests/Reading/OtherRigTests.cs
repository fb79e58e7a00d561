using Condyle.Tests.Shared;

namespace Condyle.Analyzers.Tests.Reading;

/// <summary>What one rig leaves in a static field for another: a handle means nothing there, whether a program has built the first one or not.</summary>
public class OtherRigTests
{
    private const string Rigs = """
        public static class Left { public static Control Hook; public static int Turns = 3; }
        public sealed class First : IRigDefinition { public void Define(RigDraft rig) { Left.Hook = rig.Control("hook"); } }
        """;

    [Fact]
    public async Task A_handle_that_another_rig_leaves_is_refused_by_both()
    {
        var compilation = CompiledCode.Compile(("rig.cs", Oracle.Rig("rig.Control(\"pole\").Under(Left.Hook);")), ("more.cs", Oracle.Usings + Rigs));
        var assembly = CompiledCode.Load(compilation);
        Rig.Examine((IRigDefinition)Activator.CreateInstance(assembly.GetType("First")!)!);
        var refused = Assert.ThrowsAny<Exception>(() => Rig.Examine((IRigDefinition)Activator.CreateInstance(assembly.GetType("TestRig")!)!));
        Assert.Contains("another RigDraft", refused.GetBaseException().Message, StringComparison.Ordinal);
        var found = Assert.Single(await Findings.Diagnostics(compilation), found => found.Id == "CDY9001");
        Assert.Contains("'Left.Hook', and what another rig leaves there means nothing in this one", found.GetMessage(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_handle_that_is_the_default_of_its_type_is_no_rigs()
    {
        var found = Assert.Single(await Findings.Diagnostics(CompiledCode.Compile(("rig.cs", Oracle.Rig("Control none = default; rig.Control($\"pole{Left.Turns}\").Under(none);")), ("more.cs", Oracle.Usings + Rigs))), found => found.Id == "CDY9001");
        Assert.DoesNotContain("another rig", found.GetMessage(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_handle_that_the_rig_itself_puts_there_is_its_own() => Oracle.Agrees("Left.Hook = rig.Control(\"hook\"); rig.Control(\"pole\").Under(Left.Hook);", more: "public static class Left { public static Control Hook; }");
}
