using Condyle.Benchmarks.Measuring;
using Condyle.Runtime;
using Condyle.Tests.Shared;
using Quayside;

namespace Condyle.Benchmarks.Runtime;

/// <summary>A character of 1.8 m through its range of motion: where the joints are, seen from the root, against the double reference.</summary>
internal static class Accuracy
{
    private const float FramesPerSecond = 30;

    public static IEnumerable<Result> Measure()
    {
        var rig = RigCompiler.Compile(Rig.Examine(new Stevedore()));
        var (far, turned) = (default(JointDistance), default(JointDistance));
        var (compared, beyond) = (0, 0);
        foreach (var joint in ReferenceDistance.Over(rig, RangeOfMotion.Of(rig), FramesPerSecond))
        {
            far = joint.Metres > far.Metres ? joint : far;
            turned = joint.Degrees > turned.Degrees ? joint : turned;
            compared++;
            if (joint.Metres * 1e6 > RuntimeGoals.Micrometres || joint.Degrees * 1e4 > RuntimeGoals.TenThousandthsOfADegree)
                beyond++;
        }

        yield return new(
            "the stevedore's range of motion: µm from the double reference",
            far.Metres * 1e6,
            RuntimeGoals.Micrometres,
            $"{compared / rig.Joints.Count} frames; '{far.Joint}' is furthest off; {beyond} of {compared} joints are beyond a goal");
        yield return new(
            "the stevedore's range of motion: 0.0001° from the double reference",
            turned.Degrees * 1e4,
            RuntimeGoals.TenThousandthsOfADegree,
            $"{compared / rig.Joints.Count} frames; '{turned.Joint}' is turned furthest off");
    }
}
