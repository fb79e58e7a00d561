using Condyle.Host.Catalogue;
using Condyle.Runtime;

namespace Condyle.Host.Commands;

/// <summary>A rig after its check: compiled when nothing stands against it, else with the reason why not.</summary>
internal sealed record CheckedRig(RigEntry Entry, Rig? Rig, CompiledRig? Compiled, string? Failure)
{
    public IReadOnlyList<RigFinding> Findings => Rig?.Findings ?? [];

    public string Name => Entry.Name;

    public bool IsGood => Compiled is not null;

    public static CheckedRig Of(RigEntry entry)
    {
        Rig? rig = null;
        try
        {
            rig = entry.Examine();
            return new CheckedRig(entry, rig, rig.Findings.Any(finding => finding.Severity == Severity.Error) ? null : entry.Compile(rig), null);
        }
        catch (RigFailure failure)
        {
            return new CheckedRig(entry, rig, null, failure.Message);
        }
    }
}
