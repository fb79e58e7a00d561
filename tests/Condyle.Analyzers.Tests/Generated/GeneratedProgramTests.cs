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

    private static string Failure(GeneratedProgram program, Outcome outcome, bool isShrunk)
    {
        var small = isShrunk ? Shrinker.Shrink(program.Source, outcome.Verdict) : program.Source;
        var text = $"program {program.Number} is {outcome.Verdict}:\n{outcome.Details}\n{small}";
        if (Environment.GetEnvironmentVariable("CONDYLE_PROGRAMS_OUT") is { } folder)
        {
            File.WriteAllText(Path.Combine(folder, $"{outcome.Verdict}{program.Number}.cs"), $"{program.Source}/*\n{outcome.Details}\n*/\n");
            if (isShrunk)
                File.WriteAllText(Path.Combine(folder, $"{outcome.Verdict}{program.Number}.small.cs"), $"{small}/*\n{Batch.Check([small])[0].Details}\n*/\n");
        }

        return text;
    }
}
