using Condyle.Analyzers.Reading;
using Condyle.Benchmarks.Measuring;
using Condyle.Benchmarks.Projects;
using Condyle.Model;
using Condyle.Naming;
using Condyle.Rules;

namespace Condyle.Benchmarks.Reader;

/// <summary>All rules over all rigs of a project, against reading them.</summary>
internal static class RuleShare
{
    private const int Reading = 0;
    private const int Rules = 1;

    public static Result Measure(int rigs, int rounds)
    {
        var project = new HarbourProject(rigs);
        List<RigModel> models = [];
        ReadAll(project, models)();
        var times = SideBySide.Run(warmUp: 2, rounds, settles: true, () => ReadAll(project, []), () => () =>
        {
            foreach (var model in models)
                RuleBook.Check(model, Conventions.Default);
        });
        return new Result(
            $"all rules over {rigs} rigs, against reading them",
            times.Ratio(Rules, Reading),
            ReaderGoals.AllRules,
            FormattableString.Invariant($"reading {times.Seconds(Reading) * 1000:0} ms, rules {times.Seconds(Rules) * 1000:0} ms for {models.Sum(model => model.Nodes.Count)} nodes"));
    }

    private static Action ReadAll(HarbourProject project, List<RigModel> read)
    {
        var compilation = project.Fresh();
        var models = Binding.ModelsOf(compilation);
        Binding.OfAll(compilation, models);
        var cache = new CodeCache();
        return () =>
        {
            foreach (var (definition, define) in Definitions.In(compilation))
            {
                var program = new Analyzers.Reading.Program(compilation, cache, models, CancellationToken.None);
                read.AddRange(RigReader.ReadDefinition(RigEntry.Of(definition, define), program, Conventions.Default, new Budget(CancellationToken.None)).Paths.Select(path => path.Model));
            }
        };
    }
}
