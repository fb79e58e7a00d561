using Condyle.Analyzers.Tests.Skeletons;
using Microsoft.CodeAnalysis;

namespace Condyle.Analyzers.Tests.Reading;

/// <summary>Every rig of the repository is read and run.</summary>
public class RepositoryRigTests
{
    [Theory]
    [InlineData("Quayside")]
    [InlineData("Snags")]
    public void Every_rig_is_read_whole_and_as_it_runs(string project)
    {
        var compilation = SampleProject.Compile(project);
        Oracle.AgreesOn(compilation);
        Assert.All(RigsOf(compilation), rig => Assert.Empty(Assert.Single(Oracle.Read(compilation, rig).Paths).Model.Gaps));
    }

    [Fact]
    public void The_quayside_has_no_findings()
    {
        var compilation = SampleProject.Compile("Quayside");
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
}
