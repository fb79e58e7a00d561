using Condyle.Analyzers.Reading;

namespace Condyle.Analyzers.Reporting;

/// <summary>Turns findings on models into findings on source: one for each slip, with the edits that repair it and nothing else.</summary>
internal static class RepairPlanner
{
    /// <summary>
    /// The findings that lie in a file. Which file a finding lies in is decided by the readings of the file that is to blame, so that every
    /// file comes to the same answer.
    /// </summary>
    /// <param name="file">The file.</param>
    /// <param name="readingsOf">The readings of a file, by its path; none where nobody would see a finding in it, such as generated code.</param>
    /// <param name="cancellation">Whether nobody waits for the answer any more.</param>
    public static IReadOnlyList<PlannedFinding> Plan(FileReadings file, Func<string, FileReadings?> readingsOf, CancellationToken cancellation)
    {
        var slips = new Dictionary<(string Rule, Origin Place, string? Whole), PlannedFinding>();
        var related = new Dictionary<(string Rule, Origin Place, string? Whole), List<Origin>>();
        var inOrder = new List<(string Rule, Origin Place, string? Whole)>();
        foreach (var path in file.Paths)
        {
            var edits = new RepairEdits(path, readingsOf);
            foreach (var finding in path.Findings)
            {
                cancellation.ThrowIfCancellationRequested();
                var said = path.Places.Find(finding.Place);
                var call = Seen(said);
                if (call?.Path != file.Tree.FilePath && !Compiler.Asked(() => edits.MayLieIn(file.Tree.FilePath, finding.Repairs)))
                    continue;
                if (finding.Rule.IsAboutCode && !finding.Repairs.All(repair => Compiler.Asked(() => edits.EachCallWants(repair))))
                    continue;
                var planned = finding.Repairs.Select(repair => (Repair: repair, Plan: Compiler.Asked(() => edits.Of(repair, finding.Rule)))).Where(each => each.Plan is not null).ToList();
                var repairs = planned.ConvertAll(each => each.Plan!);
                if ((planned is [{ Repair.LiesElsewhere: false }, ..] ? repairs[0].Blamed : call) is not { } place || place.Path != file.Tree.FilePath)
                    continue;
                // What is said of a rig as a whole is said of each rig, and a call can stand for much generated code.
                var key = (finding.Rule.Id, place, finding.Subject is null || call != said ? finding.Message : null);
                // The same text may go wrong more than once: in the next turn of a loop, or for the next caller.
                if (!slips.ContainsKey(key))
                {
                    slips.Add(key, new PlannedFinding(finding.Rule, finding.Message, place, related[key] = [], [.. repairs.Where(repair => repair.Edits.Count > 0)]));
                    inOrder.Add(key);
                }

                related[key].AddRange(finding.Related.Select(path.Places.Find).Prepend(said).OfType<Origin>().Where(other => other != place));
            }

            // Nobody would see it in generated code, so it shows where that is called.
            Origin? Seen(Origin? place) =>
                place is { } at && at.Path != file.Tree.FilePath && path.Places.EntryTo(at.Path) is { } entry && entry.Path == file.Tree.FilePath && readingsOf(at.Path) is null ? entry : place;
        }

        return [.. inOrder.Select(key => slips[key] with { Related = [.. related[key].Distinct()] })];
    }
}
