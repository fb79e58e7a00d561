using Condyle.Benchmarks.Measuring;
using Condyle.Benchmarks.Projects;
using Condyle.Runtime;
using Quayside;

namespace Condyle.Benchmarks.Runtime;

/// <summary>The yardstick beside other rigs: a character, and one of 2 000 nodes. What a frame, compiling and an instance cost.</summary>
internal static class Rigs
{
    private const int Rounds = 31;
    private const int Repeats = 50;

    public static IEnumerable<Result> Measure()
    {
        (string Name, Rig Rig)[] rigs =
        [
            ("the yardstick", Rig.Examine(new Yardstick())),
            ("the stevedore", Rig.Examine(new Stevedore())),
            ("2 000 nodes in parts", Rig.Examine(SizedRig.Of("many parts", 2_000).Load())),
        ];
        return rigs.SelectMany(rig => Of(rig.Name, rig.Rig));
    }

    private static IEnumerable<Result> Of(string name, Rig rig)
    {
        var compiled = RigCompiler.Compile(rig);
        var nodes = rig.Model.Nodes.Count;
        var one = compiled.NewInstance();
        var many = compiled.NewCrowd(RigCrowd.Widest);
        Evaluation.WarmUp(one.Evaluate, many.Evaluate, () => RigCompiler.Compile(rig));
        var times = SideBySide.Run(
            warmUp: 1,
            Rounds,
            settles: false,
            () => () => Evaluation.Repeat(Repeats, one.Evaluate),
            () => () => Evaluation.Repeat(Repeats, many.Evaluate),
            () => () => RigCompiler.Compile(rig));
        yield return Figure("ns for a frame of one", times.Seconds(0) * 1e9 / Repeats);
        yield return Figure($"ns for a frame of one of {RigCrowd.Widest} side by side", times.Seconds(1) * 1e9 / Repeats / RigCrowd.Widest);
        yield return new($"{name}: bytes allocated in a frame", Memory.AllocatedBy(one.Evaluate) + Memory.AllocatedBy(many.Evaluate), 0, "alone and side by side");
        yield return Figure("ms to compile it", times.Seconds(2) * 1e3);
        yield return Figure("KB for an instance", Held(compiled) / 1024);

        Result Figure(string what, double value) => new($"{name}: {what}", value, Goal: null, FormattableString.Invariant($"{nodes} nodes"));
    }

    private static double Held(CompiledRig rig)
    {
        const int Instances = 100;
        var instances = new RigInstance[Instances];
        var before = Memory.Held();
        for (var i = 0; i < Instances; i++)
            instances[i] = rig.NewInstance();
        var held = Memory.Held() - before;
        GC.KeepAlive(instances);
        return (double)held / Instances;
    }
}
