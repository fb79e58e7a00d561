using Condyle.Analyzers.Reporting;
using Microsoft.CodeAnalysis;

namespace Condyle.CodeFixes;

/// <summary>
/// The repairs of findings that can be offered. Where code may count on what goes by one, the rigs are read once more as it would leave them: too long for
/// a keystroke, so that it isn't the analyzer's work.
/// </summary>
internal sealed class RepairTrials
{
    private readonly Dictionary<DocumentId, RigReading?> readings = [];
    private readonly List<(Project Project, IReadOnlyList<TextEdit> Edits)> taken = [];

    /// <summary>Makes a repair part of what is tried from now on: code may bear each of two, and not both.</summary>
    public void Take(Project project, PlannedRepair repair)
    {
        if (repair.IsToBeTried)
            taken.Add((project, repair.Edits));
    }

    public async Task<IReadOnlyList<OfferedRepair>> Passed(Project project, Diagnostic finding, CancellationToken cancellation)
    {
        var passed = new List<OfferedRepair>();
        foreach (var offered in OfferedRepair.Of(finding))
        {
            if (await Passes(project, offered.Repair, cancellation).ConfigureAwait(false))
                passed.Add(offered);
        }

        return passed;
    }

    private async Task<bool> Passes(Project project, PlannedRepair repair, CancellationToken cancellation)
    {
        // What others changed was tried with them.
        var tried = SolutionEdits.Of(project, repair.Edits).Documents.Where(id => id.ProjectId == project.Id ? repair.IsToBeTried : IsElsewhere(id, project)).ToList();
        if (tried.Count == 0)
            return true;
        var changed = await SolutionEdits.Of(project.Solution, [.. taken, (project, repair.Edits)]).Apply(cancellation).ConfigureAwait(false);
        foreach (var id in tried)
        {
            if (!readings.TryGetValue(id, out var reading))
                readings[id] = reading = await RigReading.Of(project.Solution.GetDocument(id)!, cancellation).ConfigureAwait(false);
            if (id.ProjectId != project.Id && reading is null or { Paths.Count: 0 })
                continue;
            if (reading is null || !await reading.Bears(changed.GetDocument(id)!, cancellation).ConfigureAwait(false))
                return false;
        }

        return true;
    }

    // A file that several projects link is judged for one of them. A project for several frameworks is one.
    private static bool IsElsewhere(DocumentId id, Project project) => project.Solution.GetProject(id.ProjectId)?.FilePath is not { } path || path != project.FilePath;
}
