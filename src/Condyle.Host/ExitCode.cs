namespace Condyle.Host;

/// <summary>What a program says to the shell that ran it.</summary>
internal static class ExitCode
{
    public const int Ok = 0;

    /// <summary>There are findings that are errors, or the work failed.</summary>
    public const int Failed = 1;

    /// <summary>The command line, a file or a clip can't be used.</summary>
    public const int BadInput = 2;
}
