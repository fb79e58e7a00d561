using Condyle.Tests.Shared;
using Microsoft.CodeAnalysis;

namespace Condyle.Analyzers.Tests.Reading;

/// <summary>An editor has the source of the projects beside a rig's, a build has only their assemblies: both read the same.</summary>
public sealed class OtherProjectTests
{
    private const string Shared = """
        using Condyle;

        public class Parts
        {
            public const string Deck = "deck";
            public static readonly string Drum = "drum";
            protected string word = "winch";

            public static string Tide { get; set; } = "tide";

            public string Suffix { get; } = "_parts";

            public static string Of(string name) => name + "_parts";

            public static Group Add(RigDraft rig, string name) => rig.Group(name);
        }

        public record struct Berth(string Name, int Number = 3);
        """;

    [Theory]
    [InlineData("rig.Group(Parts.Deck);")]
    [InlineData("rig.Group(Parts.Drum);")]
    [InlineData("rig.Group(Parts.Tide); Parts.Tide = \"ebb\"; rig.Group(Parts.Tide);")]
    [InlineData("rig.Group(Parts.Of(\"drum\"));")]
    [InlineData("rig.Group(new Parts().Suffix);")]
    [InlineData("Parts.Add(rig, \"drum\").Under(rig.Control(\"winch\"));")]
    [InlineData("var berth = new Berth(\"quay\"); rig.Group(berth.Name); if (berth == new Berth(\"quay\")) rig.Group(\"same\");")]
    [InlineData("rig.Group(new Own().Word);")]
    public void Code_of_another_project_is_unknown_whether_its_source_is_at_hand_or_not(string body)
    {
        const string members = "private sealed class Own : Parts { public string Word => word + Suffix; }";
        var library = CompiledCode.Compile(("parts.cs", Shared)).WithAssemblyName("Shared");
        var rigs = CompiledCode.Compile(("rig.cs", Oracle.Rig(body, members)));
        var inEditor = rigs.AddReferences(library.ToMetadataReference());
        var inBuild = rigs.AddReferences(ImageOf(library));

        Assert.Equal(Read(inBuild), Read(inEditor));
    }

    [Fact]
    public async Task A_slip_in_a_helper_of_another_project_shows_in_neither_of_them()
    {
        var library = CompiledCode.Compile(("parts.cs", Shared)).WithAssemblyName("Shared");
        var rigs = CompiledCode.Compile(("rig.cs", Oracle.Rig("rig.Group(\"hold\"); Parts.Add(rig, \"drum\"); rig.Group(Parts.Of(\"winch\"));")));
        var inEditor = await Findings.Diagnostics(rigs.AddReferences(library.ToMetadataReference()));
        var inBuild = await Findings.Diagnostics(rigs.AddReferences(ImageOf(library)));

        Assert.Equal(["CDY1001 rig.cs", "CDY9002 rig.cs"], Shown(inEditor));
        Assert.Equal(Shown(inBuild), Shown(inEditor));

        static IEnumerable<string> Shown(IEnumerable<Diagnostic> found) => found.Select(diagnostic => $"{diagnostic.Id} {diagnostic.Location.SourceTree!.FilePath}").Order();
    }

    private static IReadOnlyList<string> Read(Compilation compilation)
    {
        Assert.DoesNotContain(compilation.GetDiagnostics(), found => found.Severity == DiagnosticSeverity.Error);
        return [.. Oracle.Read(compilation, "TestRig").Paths.SelectMany(path => Oracle.Lines(path, compilation).Append("---"))];
    }

    private static MetadataReference ImageOf(Compilation library)
    {
        using var image = new MemoryStream();
        Assert.True(library.Emit(image).Success);
        return MetadataReference.CreateFromImage(image.ToArray());
    }
}
