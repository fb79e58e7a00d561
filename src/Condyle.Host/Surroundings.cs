using System.Reflection;
using Condyle.Model;

namespace Condyle.Host;

/// <summary>All that a program takes from the process around it, so that a test can stand in for it.</summary>
/// <param name="Program">The program's name.</param>
/// <param name="Types">The public types among which its rigs and clips are found.</param>
/// <param name="Output">Where results go.</param>
/// <param name="Error">Where errors go.</param>
/// <param name="IsTerminal">Whether a person watches the output: colours and a progress bar are for people only.</param>
/// <param name="ProgramFolder">Where delivered files are looked up first.</param>
internal sealed record Surroundings(string Program, IReadOnlyList<Type> Types, TextWriter Output, TextWriter Error, bool IsTerminal, string ProgramFolder)
{
    /// <summary>The process's environment.</summary>
    public Func<string, string?> Variable { get; init; } = Environment.GetEnvironmentVariable;

    /// <summary>Prints a line that stays one, whatever stands in the names that others gave their files, clips and joints.</summary>
    public void Tell(string line) => Output.WriteLine(Messages.OnOneLine(line));

    /// <summary>The same for an error.</summary>
    public void TellError(string message) => Error.WriteLine(Messages.OnOneLine($"error: {message}"));

    public static Surroundings OfProcess(Assembly rigs) => new(
        rigs.GetName().Name ?? "this program",
        rigs.GetExportedTypes(),
        Console.Out,
        Console.Error,
        !Console.IsOutputRedirected && string.IsNullOrEmpty(Environment.GetEnvironmentVariable("NO_COLOR")),
        AppContext.BaseDirectory);
}
