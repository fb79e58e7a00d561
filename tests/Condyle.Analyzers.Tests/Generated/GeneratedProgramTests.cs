using System.Globalization;
using Xunit.Abstractions;

namespace Condyle.Analyzers.Tests.Generated;

/// <summary>
/// Random programs are read as they run. <c>CONDYLE_PROGRAMS</c> sets how many, <c>CONDYLE_PROGRAMS_FROM</c> which is the first,
/// <c>CONDYLE_PROGRAMS_OUT</c> a folder for those that fail and what they shrink to.
/// </summary>
public class GeneratedProgramTests(ITestOutputHelper output)
{
    /// <summary>How many programs the suite reads and runs.</summary>
    public const int InTheSuite = 200;

    private const int BatchSize = 50;
    private const int Shown = 5;

    [Fact]
    public void Every_program_is_read_as_it_runs()
    {
        var (first, count) = (Setting("CONDYLE_PROGRAMS_FROM", 0), Setting("CONDYLE_PROGRAMS", InTheSuite));
        var failures = new List<string>();
        for (var from = first; from < first + count; from += BatchSize)
        {
            var programs = Enumerable.Range(from, Math.Min(BatchSize, first + count - from)).Select(ProgramGen.Write).ToList();
            foreach (var (program, outcome) in programs.Zip(Batch.Check([.. programs.Select(program => program.Source)])))
            {
                if (outcome.Verdict != Verdict.Same)
                    failures.Add(Failure(program, outcome, isShrunk: failures.Count < Shown));
            }
        }

        output.WriteLine($"{count} programs from {first} on, {failures.Count} of them failed.");
        Assert.True(failures.Count == 0, $"{failures.Count} of {count} programs failed:\n{string.Join("\n", failures.Take(Shown))}");
    }

    private static int Setting(string name, int otherwise) =>
        Environment.GetEnvironmentVariable(name) is { } set ? int.Parse(set, CultureInfo.InvariantCulture) : otherwise;

    // Making a program small takes minutes, so only a run that looks for failures does it.
    private static string Failure(GeneratedProgram program, Outcome outcome, bool isShrunk)
    {
        var source = program.Source;
        if (Environment.GetEnvironmentVariable("CONDYLE_PROGRAMS_OUT") is { } folder)
        {
            var file = Path.Combine(Directory.CreateDirectory(folder).FullName, $"{outcome.Verdict}{program.Number}");
            File.WriteAllText($"{file}.cs", $"{source}/*\n{outcome.Details}\n*/\n");
            if (isShrunk)
            {
                source = Shrinker.Shrink(source, outcome.Verdict);
                File.WriteAllText($"{file}.small.cs", $"{source}/*\n{Batch.Check([source])[0].Details}\n*/\n");
            }
        }

        return $"program {program.Number} is {outcome.Verdict}:\n{outcome.Details}\n{source}";
    }
}
