using Condyle.Host.Catalogue;
using Condyle.Host.Reporting;
using Condyle.Host.Sheets;
using Condyle.Runtime;

namespace Condyle.Host.Commands;

/// <summary>Says what changed between two builds of a rig.</summary>
internal sealed class CompareCommand(Surroundings surroundings)
{
    /// <param name="before">A model file.</param>
    /// <param name="after">Another one; null for the rig of this program.</param>
    /// <param name="rig">The rig of this program; null for the one that has the name of that in the file.</param>
    /// <param name="json">Whether the result is printed as JSON.</param>
    public int Run(string before, string? after, string? rig, bool json)
    {
        var was = SheetFile.Read(before);
        var now = after is null ? SheetWriter.Of(Counterpart(was, before, rig).Examine()) : SheetFile.Read(after);
        var changes = SheetComparison.Of(was, now);
        if (json)
            JsonReport.Write(surroundings.Output, new { rig = now.Rig, rigBefore = was.Rig, before, after, changes });
        else
            Show(now.Rig, was.Rig == now.Rig ? before : $"{before}, which has {was.Rig}", changes);
        return ExitCode.Ok;
    }

    private RigEntry Counterpart(RigSheet was, string before, string? rig)
    {
        var catalogue = RigCatalogue.Of(surroundings);
        if (rig is null && !catalogue.Has(was.Rig))
            throw new BadInputException(before, $"its rig '{was.Rig}' is none of this project", $"Say with --rig what to compare it with. {Nearest.To(was.Rig, catalogue.Rigs.Select(entry => entry.Name))}");
        return catalogue.Choose(rig ?? was.Rig).Single();
    }

    private void Show(string rig, string before, IReadOnlyList<SheetChange> changes)
    {
        surroundings.Tell(changes.Count == 0 ? $"{rig}: nothing changed since {before}" : $"{rig}: {(changes.Count == 1 ? "1 change" : $"{changes.Count} changes")} since {before}");
        foreach (var what in changes.GroupBy(change => change.What))
        {
            surroundings.Tell($"  {what.Key}s");
            foreach (var change in what)
                surroundings.Tell($"    {change.Kind switch { SheetChange.Added => "+", SheetChange.Removed => "-", _ => "~" }} {change.Name}: {string.Join("; ", change.Details)}");
        }
    }
}
