using System.Numerics;
using Condyle.Evaluation;
using Condyle.Tests.Shared;

namespace Condyle.Runtime.Tests.Evaluation;

/// <summary>A blend of two sources against implementations that nobody here wrote: gl-matrix 3.4.4, <c>quat.slerp</c>, and three.js r187, <c>Quaternion.slerp</c>.</summary>
public class OutsideBlendTests
{
    // Below four degrees, three.js takes the straight line between the quaternions and makes its length one.
    private const double ReferenceWithin = 1e-4;
    private const double StraightLineWithin = 1e-3;
    private const double RuntimeWithin = 1e-3;

    [SkippableFact]
    public void Two_sources_are_blended_along_the_shortest_arc_by_reference_and_runtime()
    {
        var random = new Random(1);
        var questions = Enumerable.Range(0, 200).Select(_ => (A: Turn(random), B: Turn(random), T: random.NextSingle())).Concat(Hard(random)).ToArray();
        var answers = OutsideChecks.Slerp(questions.Select(q => (Numbers(q.A), Numbers(q.B), (double)q.T)));

        var rig = RigCompiler.Compile(Rig.Build(new BlendedHook()));
        var instance = rig.NewInstance();
        for (var i = 0; i < questions.Length; i++)
        {
            var (a, b, t) = questions[i];
            var reference = Slerp.Between((Quaterniond)a, (Quaterniond)b, t).ToSingle();
            instance.SetTurn(rig.ControlIndex("a"), a);
            instance.SetTurn(rig.ControlIndex("b"), b);
            instance.SetSwitch(rig.SwitchIndex("a.b"), t);
            instance.Evaluate();

            foreach (var (answer, within) in new[] { (answers[0][i], ReferenceWithin), (answers[1][i], StraightLineWithin) })
            {
                var expected = new Quaternion((float)answer[0], (float)answer[1], (float)answer[2], (float)answer[3]);
                Assert.InRange(DegreesBetween(expected, reference), 0, within);
                Assert.InRange(DegreesBetween(expected, instance.JointRotation(0)), 0, within + RuntimeWithin);
            }
        }
    }

    // Nearly the same, nearly half a turn apart, the same with opposite signs, and at and beside the ends.
    private static IEnumerable<(Quaternion A, Quaternion B, float T)> Hard(Random random) =>
        from angle in new[] { 0, 1e-7f, 1e-5f, 1e-3f, 0.06f, 0.07f, MathF.PI - 0.01f, MathF.PI - 1e-4f }
        from sign in new[] { 1, -1 }
        from t in new[] { 0, 1e-6f, 0.5f, 1 - 1e-6f, 1 }
        let a = Turn(random)
        let axis = Vector3.Transform(Vector3.UnitX, Turn(random))
        select (a, (a * Quaternion.CreateFromAxisAngle(axis, angle)) * sign, t);

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
