namespace Condyle.Benchmarks.Measuring;

/// <summary>What the figures were measured on.</summary>
internal static class Machine
{
    private const string ProcessorFile = "/proc/cpuinfo";

    public static string Processor { get; } = File.Exists(ProcessorFile)
        ? File.ReadLines(ProcessorFile).FirstOrDefault(line => line.StartsWith("model name", StringComparison.Ordinal))?.Split(':')[1].Trim() ?? "an unknown processor"
        : Environment.GetEnvironmentVariable("PROCESSOR_IDENTIFIER") ?? "an unknown processor";
}
