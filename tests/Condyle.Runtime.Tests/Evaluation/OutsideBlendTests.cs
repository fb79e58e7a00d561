using System.Numerics;
using Condyle.Evaluation;
using Condyle.Tests.Shared;

namespace Condyle.Runtime.Tests.Evaluation;

/// <summary>A blend of two sources against an implementation that nobody here wrote: gl-matrix 3.4.4, <c>quat.slerp</c>.</summary>
public class OutsideBlendTests
{
    [SkippableFact]
    public void Two_sources_are_blended_along_the_shortest_arc_by_reference_and_runtime()
    {
        var random = new Random(1);
        var questions = Enumerable.Range(0, 200).Select(_ => (A: Turn(random), B: Turn(random), T: random.NextSingle())).ToArray();
        var answers = OutsideChecks.Slerp(questions.Select(q => (Numbers(q.A), Numbers(q.B), (double)q.T)));

        var rig = RigCompiler.Compile(Rig.Build(new BlendedHook()));
        var instance = rig.NewInstance();
        for (var i = 0; i < questions.Length; i++)
        {
            var (a, b, t) = questions[i];
            var expected = new Quaternion((float)answers[i][0], (float)answers[i][1], (float)answers[i][2], (float)answers[i][3]);
            var reference = Slerp.Between((Quaterniond)a, (Quaterniond)b, t).ToSingle();
            instance.SetTurn(rig.ControlIndex("a"), a);
            instance.SetTurn(rig.ControlIndex("b"), b);
            instance.SetSwitch(rig.SwitchIndex("a.b"), t);
            instance.Evaluate();

            Assert.True(DegreesBetween(expected, reference) < 1e-4, $"reference: {a} to {b} at {t}");
            Assert.True(DegreesBetween(expected, instance.JointRotation(0)) < 1e-3, $"runtime: {a} to {b} at {t}");
        }
    }

    private static Quaternion Turn(Random random)
    {
        float Next() => (random.NextSingle() * 2) - 1;
        return Quaternion.Normalize(new Quaternion(Next(), Next(), Next(), Next()));
    }

    private static double[] Numbers(Quaternion q) => [q.X, q.Y, q.Z, q.W];

    // By the chord, which keeps its digits for small angles.
    private static double DegreesBetween(Quaternion a, Quaternion b)
    {
        var chord = Math.Min((a - b).Length(), (a + b).Length());
        return 4 * Math.Asin(Math.Min(1, chord / 2)) * 180 / Math.PI;
    }

    private sealed class BlendedHook : IRigDefinition
    {
        public void Define(RigDraft rig)
        {
            var hook = rig.Skeleton("crane").Root("hook");
            var (a, b) = (rig.Control("a"), rig.Control("b"));
            var amount = a.Switch("b");
            rig.Blend((Node)hook).From(a, amount.Inverse).From(b, amount);
        }
    }
}
