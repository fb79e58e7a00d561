using Condyle.Analyzers.Tests.Reporting;
using Condyle.Tests.Shared;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CodeActions;
using Microsoft.CodeAnalysis.CodeRefactorings;
using Microsoft.CodeAnalysis.Text;

namespace Condyle.CodeFixes.Tests.Refactorings;

/// <summary>What a refactoring offers at a caret, marked as <c>$$</c>, or for a selection, as <c>[|…|]</c>; the code is as in <see cref="RigSnippet"/>.</summary>
internal static class Offered
{
    private const string RigFile = "/0/rig.cs";

    /// <summary>One change is offered, and gives this code; read and run, it is the same rig.</summary>
    /// <returns>The files before and after it.</returns>
    public static async Task<((string, string)[] Before, (string, string)[] After)> By<T>(RigSnippet snippet, string title, string after, string? members = null)
        where T : CodeRefactoringProvider, new()
    {
        using var workspace = new AdhocWorkspace();
        var files = Unmarked(snippet, out var span);
        var action = Assert.Single(await ActionsOf<T>(Open(workspace, files), span));
        Assert.Equal(title, action.Title);
        var text = await TextAfter(action, RigFile);
        (string Path, string Source)[] result = [.. files.Select(file => file.Path == RigFile ? (file.Path, text) : file)];
        Assert.Equal(new RigSnippet(after, members ?? snippet.Members).PlainFiles[0].Source, text);
        await FrontEnds.Agree(result);
        return (files, result);
    }

    public static async Task Nothing<T>(RigSnippet snippet)
        where T : CodeRefactoringProvider, new()
    {
        using var workspace = new AdhocWorkspace();
        var files = Unmarked(snippet, out var span);
        Assert.Empty(await ActionsOf<T>(Open(workspace, files), span));
    }

    /// <summary>The models of a rig's code, a line an element, without numbers of events.</summary>
    public static IReadOnlyList<string> Model((string Path, string Source)[] files)
    {
        var compilation = CompiledCode.Compile(files);
        return [.. Analyzers.Tests.Reading.Oracle.Read(compilation, "Docker").Paths
            .SelectMany(path => Condyle.Model.ModelText.Lines(path.Model, _ => null)).Select(line => System.Text.RegularExpressions.Regex.Replace(line, @"#\d+", "#"))];
    }

    public static async Task<string> TextAfter(CodeAction action, string file)
    {
        var changed = Assert.Single((await action.GetOperationsAsync(CancellationToken.None)).OfType<ApplyChangesOperation>()).ChangedSolution;
        return (await changed.GetDocument(changed.GetDocumentIdsWithFilePath(file).Single())!.GetTextAsync()).ToString();
    }

    private static (string Path, string Source)[] Unmarked(RigSnippet snippet, out TextSpan span)
    {
        var files = snippet.PlainFiles;
        var text = snippet.Files[0].Source;
        Microsoft.CodeAnalysis.Testing.TestFileMarkupParser.GetPositionAndSpans(text, out var plain, out int? caret, out System.Collections.Immutable.ImmutableArray<TextSpan> spans);
        files[0] = (RigFile, plain);
        span = caret is { } at ? new TextSpan(at, 0) : spans.Single();
        return files;
    }

    /// <summary>The first of some files, as an editor has it.</summary>
    public static Document Open(AdhocWorkspace workspace, (string Path, string Source)[] files, bool isWhole = true)
    {
        var compilation = CompiledCode.Compile(files);
        Assert.Equal(isWhole, !compilation.GetDiagnostics().Any(problem => problem.Severity == DiagnosticSeverity.Error));
        var project = workspace.AddProject(ProjectInfo.Create(
            ProjectId.CreateNewId(), VersionStamp.Default, "rigs", "rigs", LanguageNames.CSharp,
            compilationOptions: compilation.Options, parseOptions: RigSnippet.Parsing, metadataReferences: compilation.References));
        var solution = files.Aggregate(workspace.CurrentSolution, (so, file) => so.AddDocument(DocumentId.CreateNewId(project.Id), file.Path, SourceText.From(file.Source), filePath: file.Path));
        return solution.GetDocument(solution.GetDocumentIdsWithFilePath(files[0].Path).Single())!;
    }

    public static async Task<IReadOnlyList<CodeAction>> ActionsOf<T>(Document document, TextSpan span)
        where T : CodeRefactoringProvider, new()
    {
        var actions = new List<CodeAction>();
        await new T().ComputeRefactoringsAsync(new CodeRefactoringContext(document, span, actions.Add, CancellationToken.None));
        return actions;
    }
}
