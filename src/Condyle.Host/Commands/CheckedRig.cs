using Condyle.Host.Catalogue;
using Condyle.Runtime;

namespace Condyle.Host.Commands;

/// <summary>A rig after its check: compiled when nothing stands against it, else with the reason why not.</summary>
internal sealed record CheckedRig(RigEntry Entry, IReadOnlyList<RigFinding> Findings, CompiledRig? Compiled, string? Failure)
{
    public string Name => Entry.Name;

    public bool IsGood => Compiled is not null;

    public static CheckedRig Of(RigEntry entry)
    {
        IReadOnlyList<RigFinding> findings = [];
        try
        {
            var rig = entry.Examine();
            findings = rig.Findings;
            return findings.Any(finding => finding.Severity == Severity.Error)
                ? new CheckedRig(entry, findings, null, null)
                : new CheckedRig(entry, findings, entry.Compile(rig), null);
        }
        catch (RigFailure failure)
        {
            return new CheckedRig(entry, findings, null, failure.Message);
        }
    }
}
