using Condyle.Analyzers.Tests.Reading;

namespace Condyle.Analyzers.Tests.Reporting;

/// <summary>A helper is read as the rigs of other files call it, in whatever way those name it; only what none calls is read for any argument.</summary>
public class FileNamesTests
{
    [Theory]
    [InlineData("namespace Parts { public static class Rig { public static void Build(RigDraft rig, bool isPlain) { BODY } } }", "public sealed class Docker : IRigDefinition { public void Define(RigDraft rig) => Parts.Rig.Build(rig, CALL); }")]
    [InlineData("public static partial class Yard { private static void Help(RigDraft rig, bool isPlain) { BODY } }", "public static partial class Yard { public sealed class Docker : IRigDefinition { public void Define(RigDraft rig) => Help(rig, CALL); } }")]
    public async Task A_helper_that_a_rig_of_another_file_calls_is_read_with_what_that_hands_it(string helper, string rig)
    {
        Task<IReadOnlyList<string>> With(string call) => Findings.InFiles(
            ("helper.cs", Oracle.Usings + helper.Replace("BODY", "if (!isPlain) rig.Group(\"arm\");", StringComparison.Ordinal)),
            ("rig.cs", Oracle.Usings + rig.Replace("CALL", call, StringComparison.Ordinal)));
        Assert.Equal(["CDY1001 \"arm\""], await With("false"));
        Assert.Empty(await With("true"));
    }
}
