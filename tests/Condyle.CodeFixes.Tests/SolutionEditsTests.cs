using Condyle.Analyzers.Reporting;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CodeActions;
using Microsoft.CodeAnalysis.CodeFixes;
using Microsoft.CodeAnalysis.Text;

namespace Condyle.CodeFixes.Tests;

/// <summary>Edits as a finding brings them along, on the documents of a solution.</summary>
public sealed class SolutionEditsTests : IDisposable
{
    private const string Rig = "/0/rig.cs";
    private const string Names = "/0/names.cs";

    private readonly AdhocWorkspace workspace = new();
    private readonly Project project;

    public SolutionEditsTests()
    {
        var id = ProjectId.CreateNewId();
        project = workspace.CurrentSolution
            .AddProject(id, "rigs", "rigs", LanguageNames.CSharp)
            .AddDocument(DocumentId.CreateNewId(id), "rig.cs", SourceText.From("// the rig"), filePath: Rig)
            .AddDocument(DocumentId.CreateNewId(id), "names.cs", SourceText.From("0123456789"), filePath: Names)
            .GetProject(id)!;
    }

    public void Dispose() => workspace.Dispose();

    [Fact]
    public async Task A_fix_may_change_another_document_than_the_findings()
    {
        var action = Assert.Single(await Offered(new TextEdit(Names, new TextSpan(10, 0), "_group")));
        Assert.Equal("Rename", action.Title);
        Assert.Equal("CDY1001.AppendText", action.EquivalenceKey);
        var changed = Assert.Single((await action.GetOperationsAsync(CancellationToken.None)).OfType<ApplyChangesOperation>()).ChangedSolution;
        Assert.Equal("0123456789_group", await TextOf(changed, Names));
        Assert.Equal("// the rig", await TextOf(changed, Rig));
    }

    [Fact]
    public async Task A_fix_that_would_change_nothing_is_not_offered() => Assert.Empty(await Offered(new TextEdit(Names, new TextSpan(2, 3), "234")));

    [Fact]
    public async Task A_fix_beyond_the_end_of_a_document_is_not_offered() => Assert.Empty(await Offered(new TextEdit(Names, new TextSpan(11, 0), "x")));

    [Fact]
    public async Task A_fix_in_a_file_of_another_project_is_not_offered() =>
        Assert.Empty(await Offered(new TextEdit(Names, new TextSpan(0, 0), "x"), new TextEdit("/0/elsewhere.cs", new TextSpan(0, 0), "x")));

    [Fact]
    public async Task Doubles_are_made_once() => Assert.Equal("01X23456789", await After(
        [new TextEdit(Names, new TextSpan(2, 0), "X")],
        [new TextEdit(Names, new TextSpan(2, 0), "X")]));

    [Fact]
    public async Task Edits_are_made_from_the_end_whatever_their_order() => Assert.Equal("A0123456B789C", await After(
        [new TextEdit(Names, new TextSpan(7, 0), "B")],
        [new TextEdit(Names, new TextSpan(0, 0), "A"), new TextEdit(Names, new TextSpan(10, 0), "C")]));

    [Fact]
    public async Task A_repair_that_cuts_into_an_earlier_one_is_left_out_as_a_whole() => Assert.Equal("01ABC56789", await After(
        [new TextEdit(Names, new TextSpan(2, 3), "ABC")],
        [new TextEdit(Names, new TextSpan(4, 2), "no"), new TextEdit(Names, new TextSpan(9, 0), "no")]));

    private async Task<IReadOnlyList<CodeAction>> Offered(params TextEdit[] edits)
    {
        var document = project.Documents.First();
        var tree = await document.GetSyntaxTreeAsync();
        var descriptor = new RigAnalyzer().SupportedDiagnostics.First(rule => rule.Id == "CDY1001");
        var finding = Diagnostic.Create(
            descriptor,
            Location.Create(tree!, new TextSpan(0, 2)),
            properties: RepairProperties.Write([new PlannedRepair("AppendText", "Rename", edits)]));
        var offered = new List<CodeAction>();
        await new RepairCodeFixProvider().RegisterCodeFixesAsync(new CodeFixContext(document, finding, (action, _) => offered.Add(action), CancellationToken.None));
        return offered;
    }

    private async Task<string> After(params IReadOnlyList<TextEdit>[] repairs)
    {
        var edits = SolutionEdits.Of(project.Solution, repairs.Select(repair => (project, repair)));
        return await TextOf(await edits.Apply(CancellationToken.None), Names);
    }

    private static async Task<string> TextOf(Solution solution, string path) =>
        (await solution.GetDocument(solution.GetDocumentIdsWithFilePath(path).Single())!.GetTextAsync()).ToString();
}
