using Condyle.Host.Catalogue;
using Condyle.Host.Reporting;

namespace Condyle.Host.Commands;

/// <summary>Lists what the rules find in the rigs.</summary>
internal sealed class CheckCommand(Surroundings surroundings)
{
    public int Run(string? rig, bool json)
    {
        List<CheckedRig> checkedRigs = [.. RigCatalogue.Of(surroundings).Choose(rig).Select(CheckedRig.Of)];
        if (json)
            JsonReport.Write(surroundings.Output, new { rigs = checkedRigs.Select(one => new RigJson(one, null, [])) });
        else
            new Report(surroundings).Show(checkedRigs);
        return checkedRigs.All(one => one.IsGood) ? ExitCode.Ok : ExitCode.Failed;
    }
}
