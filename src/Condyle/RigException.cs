namespace Condyle;

/// <summary>A rig that can't be used as it is: its message lists every error that the rules found, with its place.</summary>
public sealed class RigException : Exception
{
    internal RigException(string rig, IReadOnlyList<RigFinding> findings)
        : base($"The rig '{rig}' has {findings.Count} error{(findings.Count == 1 ? "" : "s")}:{string.Concat(findings.Select(finding => Environment.NewLine + "  " + finding))}") =>
        Findings = findings;

    /// <summary>The errors.</summary>
    public IReadOnlyList<RigFinding> Findings { get; }
}
