using Condyle.Analyzers.Reading;
using Condyle.Analyzers.Reporting;
using Condyle.Benchmarks.Measuring;
using Condyle.Benchmarks.Projects;
using Condyle.Naming;
using Microsoft.CodeAnalysis;

namespace Condyle.Benchmarks.Reader;

/// <summary>A whole build: binding every body, the same and reading every rig, the same and reporting what the rules find in every file.</summary>
internal static class WholeBuild
{
    private const int Bound = 0;
    private const int Read = 1;
    private const int Checked = 2;

    /// <param name="rigs">How many rigs the project has.</param>
    /// <param name="warmUp">Rounds that don't count: many before the first project, or what is measured is how far the runtime has got with compiling the code well.</param>
    /// <param name="rounds">Rounds that count.</param>
    public static IEnumerable<Result> Measure(int rigs, int warmUp, int rounds)
    {
        var project = new HarbourProject(rigs);
        var times = SideBySide.Run(
            warmUp,
            rounds,
            settles: true,
            () => Bind(project.Fresh()),
            () => BindAndRead(project.Fresh()),
            () => BindAndReport(project.Fresh()));
        var binding = FormattableString.Invariant($"binding {times.Seconds(Bound) * 1000:0} ms");
        yield return new Result($"a build of {rigs} rigs: reading, on top of binding", times.Ratio(Read, Bound) - 1, ReaderGoals.Reading, $"{binding}, with reading {times.Seconds(Read) * 1000:0} ms");
        yield return new Result($"a build of {rigs} rigs: reading and rules, on top of binding", times.Ratio(Checked, Bound) - 1, ReaderGoals.ReadingAndRules, $"{binding}, with reading and rules {times.Seconds(Checked) * 1000:0} ms");
    }

    private static Action Bind(Compilation compilation) => () => Binding.OfAll(compilation, Binding.ModelsOf(compilation));

    private static Action BindAndRead(Compilation compilation) => () =>
    {
        var models = Binding.ModelsOf(compilation);
        Binding.OfAll(compilation, models);
        var cache = new CodeCache();
        foreach (var (definition, define) in Definitions.In(compilation))
        {
            var program = new Analyzers.Reading.Program(compilation, cache, models, CancellationToken.None);
            RigReader.ReadDefinition(RigEntry.Of(definition, define), program, Conventions.Default, new Budget(CancellationToken.None));
        }
    };

    private static Action BindAndReport(Compilation compilation) => () =>
    {
        var models = Binding.ModelsOf(compilation);
        Binding.OfAll(compilation, models);
        var session = new ReadingSession(compilation, Definitions.Contract(compilation), isLive: false, models);
        foreach (var tree in compilation.SyntaxTrees)
        {
            var findings = session.FindingsIn(tree, CancellationToken.None);
            if (findings.Count > 0)
                throw new InvalidOperationException($"The generated project is meant to be clean, but {tree.FilePath} isn't: {findings[0].Message}");
        }
    };
}
