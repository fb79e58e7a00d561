namespace Condyle;

/// <summary>How bad a finding is.</summary>
public enum Severity
{
    /// <summary>Tidier otherwise.</summary>
    Info,

    /// <summary>It will bite someone later.</summary>
    Warning,

    /// <summary>The rig will be wrong in the engine, or can't be evaluated.</summary>
    Error,
}
