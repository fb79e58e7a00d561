using BenchmarkDotNet.Attributes;
using BenchmarkDotNet.Configs;
using BenchmarkDotNet.Jobs;
using BenchmarkDotNet.Running;
using BenchmarkDotNet.Toolchains.InProcess.Emit;

namespace Condyle.Benchmarks.Runtime;

/// <summary>A frame of the yardstick, alone and as one of several, by BenchmarkDotNet: a second opinion on the goals, with the spread of its times and its bytes.</summary>
[MemoryDiagnoser]
public class KernelBenchmarks
{
    /// <summary>On a machine with other work more turns don't make times any surer.</summary>
    private const int MostTurns = 20;

    private readonly YardstickWays ways = new();

    /// <summary>Runs them in this process: another one would have to be built, for which packages are fetched.</summary>
    public static void Run() => BenchmarkRunner.Run<KernelBenchmarks>(DefaultConfig.Instance
        .AddJob(Job.Default.WithToolchain(InProcessEmitToolchain.Instance).WithMaxIterationCount(MostTurns))
        .WithArtifactsPath(Path.Combine(Path.GetTempPath(), "condyle-benchmarks")));

    /// <summary>The rig as somebody wrote it by hand.</summary>
    [Benchmark(Baseline = true)]
    public void ByHand() => ways.ByHand.Evaluate();

    /// <summary>One rig.</summary>
    [Benchmark]
    public void OneRig() => ways.One.Evaluate();

    /// <summary>One of eight rigs side by side.</summary>
    [Benchmark(OperationsPerInvoke = 8)]
    public void OneOfEight() => ways.Eight.Evaluate();

    /// <summary>One of sixteen.</summary>
    [Benchmark(OperationsPerInvoke = 16)]
    public void OneOfSixteen() => ways.Sixteen.Evaluate();
}
