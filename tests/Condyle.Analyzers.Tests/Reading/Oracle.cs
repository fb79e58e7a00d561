using Condyle.Analyzers.Reading;
using Condyle.Analyzers.Reporting;
using Condyle.Model;
using Condyle.Tests.Shared;
using Microsoft.CodeAnalysis;

namespace Condyle.Analyzers.Tests.Reading;

/// <summary>Reads a definition and runs it, and compares the two models element for element, places by their lines.</summary>
internal static class Oracle
{
    public const string Usings = "using System; using System.Collections.Generic; using System.Linq; using System.Numerics; using Condyle;\n";

    /// <summary>A rig whose <c>Define</c> has the given body; further members stand beside it.</summary>
    public static string Rig(string body, string members = "") =>
        Usings + "public sealed class TestRig : IRigDefinition\n{\n    public void Define(RigDraft rig)\n    {\n" + body + "\n    }\n" + members + "\n}\n";

    public static void Agrees(string body, string members = "", string more = "") => AgreesOn(("rig.cs", Rig(body, members)), ("more.cs", Usings + more));

    public static void AgreesOn(params (string Path, string Source)[] files) => AgreesOn(CompiledCode.Compile(files));

    public static void AgreesOn(Compilation compilation)
    {
        var assembly = CompiledCode.Load(compilation);
        foreach (var type in assembly.GetTypes().Where(type => typeof(IRigDefinition).IsAssignableFrom(type) && !type.IsAbstract))
        {
            var ran = Condyle.Rig.Examine((IRigDefinition)Activator.CreateInstance(type)!);
            var read = Read(compilation, type.FullName!);
            Assert.Single(read.Paths);
            var expected = ModelText.Lines(ran.Model, ran.Places.Find);
            var actual = Lines(read.Paths[0], compilation);
            Assert.NotEmpty(expected);
            var differences = ModelText.Differences(expected, actual);
            Assert.True(differences.Count == 0, $"{type.Name} is read (+) otherwise than it runs (-):{Environment.NewLine}{string.Join(Environment.NewLine, differences)}");
        }
    }

    public static ReadingResult Read(Compilation compilation, string type)
    {
        var definition = compilation.GetTypeByMetadataName(type)!;
        var contract = compilation.GetTypeByMetadataName("Condyle.IRigDefinition")!.GetMembers("Define").OfType<IMethodSymbol>().Single();
        var define = (IMethodSymbol)definition.FindImplementationForInterfaceMember(contract)!;
        var conventions = TeamSettings.Of(compilation.Assembly).Conventions;
        return RigReader.ReadDefinition(RigEntry.Of(definition, define), ProgramOf(compilation), conventions, new Budget(CancellationToken.None)).Checked(conventions, CancellationToken.None);
    }

    public static Condyle.Analyzers.Reading.Program ProgramOf(Compilation compilation)
    {
        var models = new Dictionary<SyntaxTree, SemanticModel>();
        return new(compilation, new CodeCache(), tree => models.TryGetValue(tree, out var model) ? model : models[tree] = compilation.GetSemanticModel(tree), CancellationToken.None);
    }

    public static IReadOnlyList<string> Lines(ReadPath path, Compilation compilation) => ModelText.Lines(path.Model, place => LineOf(place, path, compilation));

    public static IEnumerable<ModelElement> Elements(ReadPath path, Compilation compilation) => ModelText.Elements(path.Model, place => LineOf(place, path, compilation));

    private static CodeLine? LineOf(PlaceId place, ReadPath path, Compilation compilation)
    {
        if (path.Places.LineOf(place) is not { } at)
            return null;
        var tree = compilation.SyntaxTrees.First(tree => tree.FilePath == at.Path);
        var span = tree.GetMappedLineSpan(at.Span);
        return new CodeLine(span.Path, span.StartLinePosition.Line + 1);
    }
}
