using Condyle.Host.Catalogue;
using Condyle.Host.Reporting;
using Condyle.Model;

namespace Condyle.Host.Commands;

/// <summary>Lists the rigs of a program, with what they are made of, and their clips.</summary>
internal sealed class ListCommand(Surroundings surroundings)
{
    public int Run(string? rig, bool json)
    {
        List<RigLine> lines = [.. RigCatalogue.Of(surroundings).Choose(rig).Select(RigLine.Of)];
        if (json)
            JsonReport.Write(surroundings.Output, new { rigs = lines });
        else
            lines.ForEach(Show);
        return lines.All(line => line.Failure is null && line.FailedClips.Count == 0) ? ExitCode.Ok : ExitCode.Failed;
    }

    private void Show(RigLine line)
    {
        surroundings.Tell(line.Failure is not null ? $"{line.Rig}: {line.Failure}"
            : $"{line.Rig}: {Say.Count(line.Joints, "joint")}, {Say.Count(line.Controls, "control")}, {Say.Count(line.Switches, "switch", "switches")}, {Say.Count(line.Dials, "dial")}, {Say.Count(line.Choices, "choice")}, {Say.Count(line.Nodes, "node")} in all");
        surroundings.Tell($"  delivered in {line.Skeleton ?? "no named file"}; clips: {(line.Clips.Count == 0 ? "none" : string.Join(", ", line.Clips))}");
        foreach (var failure in line.FailedClips)
            surroundings.Tell($"  error: {failure.Reason}");
    }

    private sealed record RigLine(string Rig, string? Skeleton, int Joints, int Controls, int Switches, int Dials, int Choices, int Nodes, IReadOnlyList<string> Clips, IReadOnlyList<ClipFailure> FailedClips, string? Failure)
    {
        public static RigLine Of(RigEntry entry)
        {
            try
            {
                var (model, clips) = (entry.Examine().Model, entry.Clips());
                return new RigLine(
                    entry.Name,
                    entry.SkeletonFile,
                    model.Nodes.Count(node => node.IsExported),
                    model.Nodes.Count(node => node.Kind == NodeKind.Control),
                    model.Switches.Count,
                    model.Dials.Count,
                    model.Choices.Count,
                    model.Nodes.Count,
                    [.. clips.All.Select(clip => clip.Name)],
                    clips.Failures,
                    null);
            }
            catch (RigFailure failure)
            {
                return new RigLine(entry.Name, entry.SkeletonFile, 0, 0, 0, 0, 0, 0, [], [], failure.Message);
            }
        }
    }
}
