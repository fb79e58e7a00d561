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
/// and of two steps.
/// </summary>
internal static class Growth
{
    private const int Turns = 10;
    private static readonly int[] Sizes = [100, 1_000, 10_000];

    /// <summary>From the code to what is reported.</summary>
    public static IEnumerable<Result> OfStages() => Measure(Stages);

    /// <summary>Each rule by itself.</summary>
    public static IEnumerable<Result> OfRules() => Measure(Rules);

    private static IEnumerable<Result> Measure(Func<SizedRig, IEnumerable<(string Name, Prepare Work)>> stagesOf)
    {
        var stages = new Dictionary<string, List<Step>>();
        foreach (var shape in SizedRig.Shapes)
        {
            var rigs = Sizes.Select(size => stagesOf(SizedRig.Of(shape, size)).ToList()).ToList();
            for (var stage = 0; stage < rigs[0].Count; stage++)
            {
                var name = rigs[0][stage].Name;
                if (!stages.TryGetValue(name, out var steps))
                    stages[name] = steps = [];
                steps.AddRange(StepsOf(shape, [.. rigs.Select(rig => rig[stage].Work)]));
            }
        }

        foreach (var (stage, steps) in stages)
        {
            yield return Worst(stage, "time", steps, step => step.Time, step => FormattableString.Invariant($"{step.Seconds * 1e6:0} µs"));
            yield return Worst(stage, "memory", steps, step => step.Memory, step => FormattableString.Invariant($"{step.Bytes / 1024.0:0} KB"));
        }
    }

    private static IEnumerable<(string Name, Prepare Work)> Stages(SizedRig rig)
    {
        var compilation = rig.Compilation;
        yield return ("reading", () => ReadAnew(compilation));

        var model = ModelOf(compilation);
        var draft = new RigDraft(Conventions.Default, new ProgramPlaces());
        rig.Load().Define(draft);
        yield return ("folding the model", Repeated(() => RigModel.Of(draft.Log)));
        yield return ("all rules and acceptances", Repeated(() => RuleBook.Check(model, Conventions.Default)));
        yield return ("reporting", () => ReportAnew(compilation));
    }

    // A rule is timed with what it asks for first, as if it were the only one.
    private static IEnumerable<(string Name, Prepare Work)> Rules(SizedRig rig)
    {
        var model = ModelOf(rig.Compilation);
        foreach (var rule in RuleBook.All)
            yield return (rule.Id, Repeated(() => rule.Check(new CheckedRig(model, Conventions.Default, CancellationToken.None)).Count()));
    }

    private static RigModel ModelOf(CSharpCompilation compilation)
    {
        var (definition, define) = Definitions.In(compilation).Single();
        return RigReader.ReadDefinition(RigEntry.Of(definition, define), ProgramOf(compilation), Conventions.Default, new Budget(CancellationToken.None)).Paths.Single().Model;
    }

    // Too short to be timed once.
    private static Prepare Repeated<T>(Func<T> work) => () => () =>
    {
        for (var turn = 0; turn < Turns; turn++)
            work();
    };

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

    private static IEnumerable<Step> StepsOf(string shape, Prepare[] works)
    {
        var bytes = works.Select(work => (double)Memory.AllocatedBy(work())).ToArray();
        var times = SideBySide.Run(warmUp: 2, rounds: 7, settles: false, works);
        for (var size = 1; size < works.Length; size++)
            yield return new Step(shape, Sizes[size], times.Ratio(size, size - 1), times.Seconds(size), bytes[size - 1] == 0 ? 0 : bytes[size] / bytes[size - 1], bytes[size]);
    }

    private static Result Worst(string stage, string what, List<Step> steps, Func<Step, double> ratio, Func<Step, string> absolute)
    {
        var worst = steps.MaxBy(ratio)!;
        return new Result($"ten times the nodes in one rig: {stage}, {what}", ratio(worst), ReaderGoals.TenTimesTheNodes, $"{worst.Shape}, {absolute(worst)} for {worst.Nodes} nodes");
    }

    private sealed record Step(string Shape, int Nodes, double Time, double Seconds, double Memory, double Bytes);
}
