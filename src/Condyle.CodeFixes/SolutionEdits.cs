using Condyle.Analyzers.Reporting;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.Text;

namespace Condyle.CodeFixes;

/// <summary>Text edits on the documents of a solution: each once, none into another. What stands around them stays to the letter.</summary>
internal sealed class SolutionEdits
{
    private readonly Solution solution;
    private readonly Dictionary<DocumentId, List<TextChange>> changes = [];

    private SolutionEdits(Solution solution) => this.solution = solution;

    /// <summary>The edits of one project; an edit in a file that the project hasn't got leaves none at all.</summary>
    public static SolutionEdits Of(Project project, IReadOnlyList<TextEdit> edits)
    {
        var all = new SolutionEdits(project.Solution);
        all.Add(project, edits);
        return all;
    }

    /// <summary>The edits of many repairs, in the order given: a repair that would cut into an earlier one is left out as a whole.</summary>
    public static SolutionEdits Of(Solution solution, IEnumerable<(Project Project, IReadOnlyList<TextEdit> Edits)> repairs)
    {
        var all = new SolutionEdits(solution);
        foreach (var (project, edits) in repairs)
            all.Add(project, edits);
        return all;
    }

    /// <summary>The documents that they change, also those of other projects that link the same file.</summary>
    public IEnumerable<DocumentId> Documents => changes.Keys.SelectMany(Linked);

    public async Task<bool> ChangeAnything(CancellationToken cancellation)
    {
        foreach (var pair in changes)
        {
            var text = await TextOf(pair.Key, cancellation).ConfigureAwait(false);
            if (pair.Value.TrueForAll(change => change.Span.End <= text.Length)
                && pair.Value.Exists(change => text.ToString(change.Span) != change.NewText))
                return true;
        }

        return false;
    }

    public async Task<Solution> Apply(CancellationToken cancellation)
    {
        var changed = solution;
        foreach (var pair in changes)
        {
            var text = await TextOf(pair.Key, cancellation).ConfigureAwait(false);
            var after = text.WithChanges(pair.Value.Where(change => change.Span.End <= text.Length).OrderBy(change => change.Span.Start));
            foreach (var id in Linked(pair.Key))
            {
                if (id == pair.Key || text.ContentEquals(await TextOf(id, cancellation).ConfigureAwait(false)))
                    changed = changed.WithDocumentText(id, after);
            }
        }

        return changed;
    }

    private void Add(Project project, IReadOnlyList<TextEdit> edits)
    {
        var added = new List<(DocumentId Document, TextChange Change)>();
        foreach (var edit in edits)
        {
            if (DocumentOf(project, edit.Path) is not { } here || Linked(here).First() is not { } document)
                return;
            var change = new TextChange(edit.Span, edit.Text);
            var already = changes.TryGetValue(document, out var list) ? list : [];
            if (already.Contains(change))
                continue;
            if (already.Exists(other => Collide(other.Span, change.Span)))
                return;
            added.Add((document, change));
        }

        foreach (var (document, change) in added)
        {
            if (!changes.TryGetValue(document, out var list))
                changes[document] = list = [];
            list.Add(change);
        }
    }

    // Two insertions at one place would have no order, so they collide as well.
    private static bool Collide(TextSpan one, TextSpan other) => one.OverlapsWith(other) || one.Start == other.Start;

    private static DocumentId? DocumentOf(Project project, string path) =>
        project.Solution.GetDocumentIdsWithFilePath(path).FirstOrDefault(project.ContainsDocument);

    // One file, in the order of the projects.
    private IEnumerable<DocumentId> Linked(DocumentId document) =>
        solution.GetDocument(document)!.GetLinkedDocumentIds() is { IsEmpty: false } others ? solution.ProjectIds.SelectMany(project => others.Add(document).Where(id => id.ProjectId == project)) : [document];

    private async Task<SourceText> TextOf(DocumentId id, CancellationToken cancellation) =>
        await solution.GetDocument(id)!.GetTextAsync(cancellation).ConfigureAwait(false);
}
