using System.Runtime.InteropServices;
using Condyle.Benchmarks.Measuring;
using Condyle.Benchmarks.Motion;
using Condyle.Benchmarks.Projects;
using Condyle.Benchmarks.Reader;
using Condyle.Benchmarks.Runtime;

// goals SUITE [PART]: one JSON line a goal on the standard output, the figures behind it as rows of a table on the other one. kernels: a table of the kernels.
var suites = new Dictionary<string, Dictionary<string, Func<IEnumerable<Result>>>>
{
    ["reader"] = ReaderSuite.Parts,
    ["rules"] = RuleSuite.Parts,
    ["runtime"] = RuntimeSuite.Parts,
    ["motion"] = MotionSuite.Parts,
};
if (args is ["kernels"])
{
    KernelBenchmarks.Run();
    return 0;
}

if (args is not ["goals", var name, ..] || !suites.TryGetValue(name, out var parts) || (args.Length > 2 && !parts.ContainsKey(args[2])))
{
    Console.Error.WriteLine("kernels, or goals SUITE [PART]");
    foreach (var (suite, its) in suites)
        Console.Error.WriteLine($"  {suite}: {string.Join(", ", its.Keys)}");
    return 2;
}

Console.Error.WriteLine($"{Machine.Processor}, {Environment.ProcessorCount} cores, {RuntimeInformation.FrameworkDescription}, {DateTime.Today:yyyy-MM-dd}");
Console.Error.WriteLine();
if (name is "reader" or "rules")
    HarbourProject.Verify();
Console.Error.WriteLine(Result.Heading);
foreach (var result in args.Length > 2 ? parts[args[2]]() : parts.Values.SelectMany(measure => measure()))
{
    Console.WriteLine(result.AsJson());
    Console.Error.WriteLine(result.AsRow());
}

return 0;
