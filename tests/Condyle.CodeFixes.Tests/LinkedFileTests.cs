using System.Collections.Immutable;
using Condyle.Analyzers.Reporting;
using Condyle.Tests.Shared;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CodeActions;
using Microsoft.CodeAnalysis.CodeFixes;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.Diagnostics;
using Microsoft.CodeAnalysis.Text;

namespace Condyle.CodeFixes.Tests;

/// <summary>A file that two projects link: a repair of the one is made in both, where the rigs of the other bear it.</summary>
public sealed class LinkedFileTests : IDisposable
{
    private const string Shared = "/shared/names.cs";
    private const string Names = "internal static class Names { public static string Arm => \"arm\"; }";
    private const string Repaired = "internal static class Names { public static string Arm => \"arm_group\"; }";

    private readonly AdhocWorkspace workspace = new();

    public void Dispose() => workspace.Dispose();

    [Fact]
    public async Task It_is_repaired_for_both()
    {
        var solution = Solution("rig.Group(Names.Arm);", "rig.Group(Names.Arm).Under(rig.Group(\"all_group\"));");
        Assert.All(await TextsAfter(Assert.Single(await Offered(solution, "Crane"))), text => Assert.Equal(Repaired, text));
        Assert.All(await TextsAfter(await ForAll(solution)), text => Assert.Equal(Repaired, text));
    }

    [Fact]
    public async Task It_is_repaired_where_the_other_has_no_rig_of_it() =>
        Assert.Single(await Offered(Solution("rig.Group(Names.Arm);", "rig.Group(\"all_group\");"), "Crane"));

    [Fact]
    public async Task It_is_left_alone_where_the_rigs_of_the_other_need_it_as_it_is() =>
        Assert.Empty(await Offered(Solution("rig.Group(Names.Arm);", "rig.Control(Names.Arm);"), "Crane"));

    [Fact]
    public async Task Where_the_teams_of_both_want_it_otherwise_the_first_is_heard()
    {
        var solution = Solution("rig.Group(Names.Arm);", "rig.Group(Names.Arm);", "[assembly: RigConventions(GroupSuffix = \"_bin\")]");
        Assert.All(await TextsAfter(await ForAll(solution)), text => Assert.Equal(Repaired, text));
    }

    private Solution Solution(string crane, string gull, string team = "") => With(With(workspace.CurrentSolution, "Crane", crane, ""), "Gull", gull, team);

    private static Solution With(Solution solution, string name, string code, string team)
    {
        var id = ProjectId.CreateNewId(name);
        var rig = $"using Condyle;\n{team}\npublic sealed class {name} : IRigDefinition {{ public void Define(RigDraft rig) {{ {code} }} }}";
        return solution
            .AddProject(ProjectInfo.Create(id, VersionStamp.Default, name, name, LanguageNames.CSharp, $"/{name}/{name}.csproj", compilationOptions: new CSharpCompilationOptions(OutputKind.DynamicallyLinkedLibrary), parseOptions: new CSharpParseOptions(LanguageVersion.Preview), metadataReferences: CompiledCode.Compile().References))
            .AddDocument(DocumentId.CreateNewId(id), "rig.cs", SourceText.From(rig), filePath: $"/{name}/rig.cs")
            .AddDocument(DocumentId.CreateNewId(id), "names.cs", SourceText.From(Names), filePath: Shared);
    }

    private static async Task<IReadOnlyList<CodeAction>> Offered(Solution solution, string name)
    {
        var project = solution.Projects.Single(project => project.Name == name);
        var offered = new List<CodeAction>();
        foreach (var finding in await Findings.Of(project))
        {
            var document = solution.GetDocument(finding.Location.SourceTree)!;
            await new RepairCodeFixProvider().RegisterCodeFixesAsync(new CodeFixContext(document, finding, (action, _) => offered.Add(action), CancellationToken.None));
        }

        return offered;
    }

    private static async Task<CodeAction> ForAll(Solution solution)
    {
        var document = solution.Projects.First().Documents.First();
        var asked = new FixAllContext(document, new RepairCodeFixProvider(), FixAllScope.Solution, "CDY1001.AppendText", ["CDY1001"], new Findings(), CancellationToken.None);
        return (await new RepairCodeFixProvider().GetFixAllProvider().GetFixAsync(asked))!;
    }

    private static async Task<IReadOnlyList<string>> TextsAfter(CodeAction action)
    {
        var changed = Assert.Single((await action.GetOperationsAsync(CancellationToken.None)).OfType<ApplyChangesOperation>()).ChangedSolution;
        var texts = new List<string>();
        foreach (var id in changed.GetDocumentIdsWithFilePath(Shared))
            texts.Add((await changed.GetDocument(id)!.GetTextAsync()).ToString());
        Assert.Equal(2, texts.Count);
        return texts;
    }

    private sealed class Findings : FixAllContext.DiagnosticProvider
    {
        public static async Task<ImmutableArray<Diagnostic>> Of(Project project) =>
            await (await project.GetCompilationAsync())!.WithAnalyzers([new RigAnalyzer()], new AnalyzerOptions([])).GetAnalyzerDiagnosticsAsync();

        public override async Task<IEnumerable<Diagnostic>> GetAllDiagnosticsAsync(Project project, CancellationToken cancellationToken) => await Of(project);

        public override async Task<IEnumerable<Diagnostic>> GetDocumentDiagnosticsAsync(Document document, CancellationToken cancellationToken) => await Of(document.Project);

        public override Task<IEnumerable<Diagnostic>> GetProjectDiagnosticsAsync(Project project, CancellationToken cancellationToken) => Task.FromResult<IEnumerable<Diagnostic>>([]);
    }
}
