using Condyle.Analyzers.Reading;
using Condyle.Analyzers.Reporting;
using Condyle.Benchmarks.Measuring;
using Condyle.Benchmarks.Projects;
using Condyle.Model;
using Condyle.Naming;
using Condyle.Rules;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;

namespace Condyle.Benchmarks.Reader;

/// <summary>
/// What ten times the nodes in one rig cost, in time and in memory that is allocated, for each stage or each rule: the worst of several shapes of rig
/// and of two steps. One large rig stands beside ten of a tenth, so that both take as much room in the processor's caches and give the collector as much to do.
/// </summary>
internal static class Growth
{
    private const int Times = 10;
    private static readonly (int Nodes, int Rounds)[] StepsOfRules = [(1_000, 100), (10_000, 25)];

    // Reading takes long, and all goals of the reader together less than ten minutes.
    private static readonly (int Nodes, int Rounds)[] StepsOfStages = [(1_000, 20), (10_000, 5)];

    /// <summary>From the code to what is reported.</summary>
    public static IEnumerable<Result> OfStages() => Measure(Stages, StepsOfStages);

    /// <summary>Each rule by itself.</summary>
    public static IEnumerable<Result> OfRules() => Measure(Rules, StepsOfRules);

    private static IEnumerable<Result> Measure(Func<IReadOnlyList<SizedRig>, IEnumerable<(string Name, Prepare Work)>> stagesOf, (int Nodes, int Rounds)[] measured)
    {
        var stages = new Dictionary<string, List<Step>>();
        foreach (var shape in SizedRig.Shapes)
        {
            foreach (var (nodes, rounds) in measured)
            {
                var small = stagesOf([.. Enumerable.Range(0, Times).Select(_ => SizedRig.Of(shape, nodes / Times))]);
                foreach (var (few, large) in small.Zip(stagesOf([SizedRig.Of(shape, nodes)])))
                {
                    if (!stages.TryGetValue(few.Name, out var steps))
                        stages[few.Name] = steps = [];
                    steps.Add(StepOf(shape, nodes, rounds, few.Work, large.Work));
                }
            }
        }

        foreach (var (stage, steps) in stages)
        {
            yield return Worst(stage, "time", steps, step => step.Time, step => FormattableString.Invariant($"{step.Seconds * 1e6:0} µs"));
            yield return Worst(stage, "memory", steps, step => step.Memory, step => FormattableString.Invariant($"{step.Bytes / 1024.0:0} KB"));
        }
    }

    private static IEnumerable<(string Name, Prepare Work)> Stages(IReadOnlyList<SizedRig> rigs)
    {
        yield return ("reading", Each([.. rigs.Select(rig => (Prepare)(() => ReadAnew(rig.Compilation)))]));

        var models = rigs.Select(rig => ModelOf(rig.Compilation)).ToList();
        var drafts = rigs.Select(Drafted).ToList();
        yield return ("folding the model", () => () => drafts.ForEach(draft => RigModel.Of(draft.Log)));
        yield return ("all rules and acceptances", () => () => models.ForEach(model => RuleBook.Check(model, Conventions.Default)));
        yield return ("reporting", Each([.. rigs.Select(rig => (Prepare)(() => ReportAnew(rig.Compilation)))]));
    }

    // A rule is timed with what it asks for first, as if it were the only one.
    private static IEnumerable<(string Name, Prepare Work)> Rules(IReadOnlyList<SizedRig> rigs)
    {
        var models = rigs.Select(rig => ModelOf(rig.Compilation)).ToList();
        foreach (var rule in RuleBook.All)
            yield return (rule.Id, () => () => models.ForEach(model => rule.Check(new CheckedRig(model, Conventions.Default, CancellationToken.None)).Count()));
    }

    private static Prepare Each(IReadOnlyList<Prepare> works) => () =>
    {
        var ready = works.Select(work => work()).ToList();
        return () => ready.ForEach(work => work());
    };

    private static RigDraft Drafted(SizedRig rig)
    {
        var draft = new RigDraft(Conventions.Default, new ProgramPlaces());
        rig.Load().Define(draft);
        return draft;
    }

    private static RigModel ModelOf(CSharpCompilation compilation)
    {
        var (definition, define) = Definitions.In(compilation).Single();
        return RigReader.ReadDefinition(RigEntry.Of(definition, define), ProgramOf(compilation), Conventions.Default, new Budget(CancellationToken.None)).Paths.Single().Model;
    }

    private static Action ReadAnew(CSharpCompilation compilation)
    {
        var bound = BoundAnew(compilation);
        var (definition, define) = Definitions.In(bound).Single();
        var program = ProgramOf(bound);
        return () => RigReader.ReadDefinition(RigEntry.Of(definition, define), program, Conventions.Default, new Budget(CancellationToken.None));
    }

    private static Action ReportAnew(CSharpCompilation compilation)
    {
        var bound = BoundAnew(compilation);
        var models = Binding.ModelsOf(bound);
        Binding.OfAll(bound, models);
        var session = new ReadingSession(bound, Definitions.Contract(bound), isLive: false, models);
        return () => session.FindingsIn(bound.SyntaxTrees[0], CancellationToken.None);
    }

    // Lowered code is kept with its tree, so each turn gets a tree of its own.
    private static CSharpCompilation BoundAnew(CSharpCompilation compilation)
    {
        var tree = compilation.SyntaxTrees[0];
        return compilation.ReplaceSyntaxTree(tree, CSharpSyntaxTree.Create((Microsoft.CodeAnalysis.CSharp.Syntax.CompilationUnitSyntax)tree.GetRoot(), (CSharpParseOptions)tree.Options, tree.FilePath));
    }

    private static Analyzers.Reading.Program ProgramOf(CSharpCompilation compilation)
    {
        var models = Binding.ModelsOf(compilation);
        Binding.OfAll(compilation, models);
        return new(compilation, new CodeCache(), models, CancellationToken.None);
    }

    // The fastest turns count: in the others somebody else had the memory, or the whole heap was collected.
    private static Step StepOf(string shape, int nodes, int rounds, Prepare small, Prepare large)
    {
        var times = SideBySide.Run(warmUp: 2, rounds, settles: false, small, large);
        var (few, all) = ((double)Memory.AllocatedBy(small()), (double)Memory.AllocatedBy(large()));
        var (seconds, fewSeconds) = (times.Fastest(1), times.Fastest(0));
        return new Step(shape, nodes, Times * seconds / fewSeconds, seconds, few == 0 ? 0 : Times * all / few, all);
    }

    private static Result Worst(string stage, string what, List<Step> steps, Func<Step, double> ratio, Func<Step, string> absolute)
    {
        var worst = steps.MaxBy(ratio)!;
        return new Result($"ten times the nodes in one rig: {stage}, {what}", ratio(worst), ReaderGoals.TenTimesTheNodes, $"{worst.Shape}, {absolute(worst)} for {worst.Nodes} nodes");
    }

    private sealed record Step(string Shape, int Nodes, double Time, double Seconds, double Memory, double Bytes);
}
