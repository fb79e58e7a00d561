using Condyle.Analyzers.Tests.Skeletons;
using Condyle.Host;
using Condyle.Runtime;
using Condyle.Tests.Shared;
using Microsoft.CodeAnalysis;

namespace Condyle.Analyzers.Tests.Reading;

/// <summary>Every rig of the repository is read and run, from its project's sources and the skeleton classes that are generated for it.</summary>
public class RepositoryRigTests
{
    private const string ImplicitUsings =
        "global using System; global using System.Collections.Generic; global using System.IO; global using System.Linq; global using System.Threading; global using System.Threading.Tasks;";

    [Theory]
    [InlineData("Quayside")]
    [InlineData("Snags")]
    public void Every_rig_is_read_whole_and_as_it_runs(string project)
    {
        var compilation = Compile(project);
        Oracle.AgreesOn(compilation);
        Assert.All(RigsOf(compilation), rig => Assert.Empty(Assert.Single(Oracle.Read(compilation, rig).Paths).Model.Gaps));
    }

    [Fact]
    public void The_quayside_has_no_findings()
    {
        var compilation = Compile("Quayside");
        Assert.All(RigsOf(compilation), rig => Assert.Empty(Assert.Single(Oracle.Read(compilation, rig).Paths).Findings));
    }

    private static List<string> RigsOf(Compilation compilation)
    {
        var contract = compilation.GetTypeByMetadataName("Condyle.IRigDefinition")!;
        List<string> rigs = [.. compilation.GetSymbolsWithName(_ => true, SymbolFilter.Type).OfType<INamedTypeSymbol>()
            .Where(type => type is { TypeKind: TypeKind.Class, IsAbstract: false } && type.AllInterfaces.Contains(contract, SymbolEqualityComparer.Default))
            .Select(type => type.ToDisplayString())];
        Assert.NotEmpty(rigs);
        return rigs;
    }

    private static Compilation Compile(string project)
    {
        var folder = Repository.PathTo("sample-rigs", project);
        var sources = Directory.GetFiles(folder, "*.cs", SearchOption.AllDirectories)
            .Where(file => Path.GetRelativePath(folder, file).Split(Path.DirectorySeparatorChar)[0] is not ("bin" or "obj"))
            .Order(StringComparer.Ordinal)
            .Select(file => (file, File.ReadAllText(file)));
        var skeletons = Directory.GetFiles(folder, "*.gltf").Order(StringComparer.Ordinal)
            .Select(file => (Path.GetFileName(file) + ".g.cs", GeneratorRun.Of([new Extra(file, File.ReadAllText(file))], ("RootNamespace", project)).Code));
        return CompiledCode.Compile([.. sources, .. skeletons, ("ImplicitUsings.g.cs", ImplicitUsings)])
            .AddReferences(new[] { typeof(Clip), typeof(RigProgram) }.Select(type => MetadataReference.CreateFromFile(type.Assembly.Location)))
            .WithOptions(new Microsoft.CodeAnalysis.CSharp.CSharpCompilationOptions(OutputKind.ConsoleApplication, nullableContextOptions: NullableContextOptions.Enable));
    }
}
