using System.Reflection;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CodeActions;
using Microsoft.CodeAnalysis.CodeFixes;
using Microsoft.CodeAnalysis.Diagnostics;
using Microsoft.CodeAnalysis.MSBuild;
using Microsoft.CodeAnalysis.Text;

namespace Condyle.EndToEnd.Tests.Clients;

/// <summary>
/// An editor without a window: it opens a project, analyses the file at hand after each keystroke, and takes fixes from the assemblies
/// that the project names. Findings come as editors ask for them, file by file, never at the end of a compilation.
/// </summary>
internal sealed class Editor : ITypedInto, IDisposable
{
    private readonly MSBuildWorkspace workspace;
    private readonly ProjectId project;
    private readonly IReadOnlyList<CodeFixProvider> fixers;
    private Solution solution;

    private Editor(MSBuildWorkspace workspace, Project opened)
    {
        this.workspace = workspace;
        project = opened.Id;
        solution = opened.Solution;
        fixers = [.. OurReferences(opened).SelectMany(FixersOf)];
    }

    public static async Task<Editor> OpenAsync(string projectFile)
    {
        var workspace = MSBuildWorkspace.Create(new Dictionary<string, string> { ["Configuration"] = Repository.Configuration });
        // What the project refers to is taken as it was built.
        workspace.LoadMetadataForReferencedProjects = true;
        return new Editor(workspace, await workspace.OpenProjectAsync(projectFile));
    }

    public async Task<string> TextOfAsync(string file) => (await DocumentOf(file).GetTextAsync()).ToString();

    /// <summary>Replaces a stretch of text, as typing does.</summary>
    public async Task TypeAsync(string file, string over, string text)
    {
        var before = await DocumentOf(file).GetTextAsync();
        var at = before.ToString().IndexOf(over, StringComparison.Ordinal);
        Assert.True(at >= 0, $"'{over}' is not in {file}.");
        solution = solution.WithDocumentText(DocumentOf(file).Id, before.WithChanges(new TextChange(new TextSpan(at, over.Length), text)));
    }

    public async Task<IReadOnlyList<Squiggle>> SquigglesInAsync(string file)
    {
        var text = await TextOfAsync(file);
        return [.. (await SquigglesAsync(file))
            .OrderBy(squiggle => squiggle.Location.SourceSpan.Start)
            .Select(squiggle => new Squiggle(squiggle.Id, text.Substring(squiggle.Location.SourceSpan.Start, squiggle.Location.SourceSpan.Length)))];
    }

    /// <summary>The squiggles of our rules in a file.</summary>
    public async Task<IReadOnlyList<Diagnostic>> SquigglesAsync(string file)
    {
        var opened = solution.GetProject(project)!;
        var analyzers = OurReferences(opened).SelectMany(reference => reference.GetAnalyzers(LanguageNames.CSharp)).ToList();
        var compilation = (await opened.GetCompilationAsync())!.WithAnalyzers([.. analyzers], opened.AnalyzerOptions);
        var model = await DocumentOf(file).GetSemanticModelAsync();
        return await compilation.GetAnalyzerSemanticDiagnosticsAsync(model!, filterSpan: null, CancellationToken.None);
    }

    /// <summary>What the light bulb at a squiggle offers.</summary>
    public async Task<IReadOnlyList<CodeAction>> FixesAsync(string file, Diagnostic squiggle)
    {
        var offered = new List<CodeAction>();
        foreach (var fixer in fixers.Where(fixer => fixer.FixableDiagnosticIds.Contains(squiggle.Id)))
            await fixer.RegisterCodeFixesAsync(new CodeFixContext(DocumentOf(file), squiggle, (action, _) => offered.Add(action), CancellationToken.None));
        return offered;
    }

    public async Task ApplyAsync(CodeAction fix)
    {
        foreach (var change in (await fix.GetOperationsAsync(CancellationToken.None)).OfType<ApplyChangesOperation>())
            solution = change.ChangedSolution;
    }

    public void Dispose() => workspace.Dispose();

    private Document DocumentOf(string file) => solution.GetProject(project)!.Documents.Single(document => document.Name == file);

    private static IEnumerable<AnalyzerFileReference> OurReferences(Project opened) =>
        opened.AnalyzerReferences.OfType<AnalyzerFileReference>().Where(reference => Path.GetFileName(reference.FullPath).StartsWith("Condyle.", StringComparison.Ordinal));

    private static IEnumerable<CodeFixProvider> FixersOf(AnalyzerFileReference reference) => reference.GetAssembly().GetTypes()
        .Where(type => type.GetCustomAttribute<ExportCodeFixProviderAttribute>() is not null)
        .Select(type => (CodeFixProvider)Activator.CreateInstance(type)!);
}
