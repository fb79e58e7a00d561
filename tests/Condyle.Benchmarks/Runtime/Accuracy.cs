using System.Numerics;
using Condyle.Benchmarks.Measuring;
using Condyle.Evaluation;
using Condyle.Model;
using Condyle.Runtime;
using Quayside;

namespace Condyle.Benchmarks.Runtime;

/// <summary>A character of 1.8 m through its range of motion: where the joints are, seen from the root, against the double reference.</summary>
internal static class Accuracy
{
    private const float FramesPerSecond = 30;
    private const double TenThousandthsInRadian = 1e4 * 180 / Math.PI;

    public static IEnumerable<Result> Measure()
    {
        var rig = Rig.Examine(new Stevedore());
        var (model, rest) = (rig.Model, RestPose.Of(rig.Model));
        var live = RigCompiler.Compile(rig).NewInstance();
        var clip = RangeOfMotion.Of(live.Rig);
        var player = new ClipPlayer(live.Rig, clip);
        List<RigNode> joints = [.. model.Nodes.Where(node => node.IsExported)];
        var (far, farJoint, turned, turnedJoint) = (0.0, "", 0.0, "");
        var (beyond, compared) = (0, 0);
        var frames = (int)(clip.Seconds * FramesPerSecond);
        for (var frame = 0; frame <= frames; frame++)
        {
            var time = frame / FramesPerSecond;
            player.Pose(live, time);
            live.Evaluate();
            var exact = ReferenceEvaluator.Evaluate(model, rest, PoseOf(clip, live.Rig, model, time));
            var (exactRoot, liveRoot) = (exact.WorldOf(joints[0]).Inverse(), FrameOf(live.JointWorld(0)).Inverse());
            foreach (var (index, joint) in joints.Index())
            {
                var (a, b) = (exactRoot * exact.WorldOf(joint), liveRoot * FrameOf(live.JointWorld(index)));
                if ((a.Origin - b.Origin).Length is var distance && distance > far)
                    (far, farJoint) = (distance, joint.Title);
                if (Quaterniond.Angle(a.Rotation, b.Rotation) is var angle && angle > turned)
                    (turned, turnedJoint) = (angle, joint.Title);
                compared++;
                if (distance * 1e6 > RuntimeGoals.Micrometres || angle * TenThousandthsInRadian > RuntimeGoals.TenThousandthsOfADegree)
                    beyond++;
            }
        }

        yield return new("the stevedore's range of motion: µm from the double reference", far * 1e6, RuntimeGoals.Micrometres, $"{frames + 1} frames; {farJoint} is furthest off; {beyond} of {compared} joints are beyond a goal");
        yield return new(
            "the stevedore's range of motion: 0.0001° from the double reference",
            turned * TenThousandthsInRadian,
            RuntimeGoals.TenThousandthsOfADegree,
            $"{frames + 1} frames; {turnedJoint} is turned furthest off");
    }

    private static Pose PoseOf(Clip clip, CompiledRig rig, RigModel model, float time)
    {
        var pose = new Pose();
        foreach (var (index, control) in model.Nodes.Where(node => node.Kind == NodeKind.Control).Index())
        {
            var name = rig.Controls[index].Name;
            pose.Set(control.Id, new Trs(
                (Vector3d)(clip.Moves.TryGetValue(name, out var move) ? move.At(time) : Vector3.Zero),
                (Quaterniond)(clip.Turned.TryGetValue(name, out var turn) ? turn.At(time) : Quaternion.Identity),
                (Vector3d)(clip.Scales.TryGetValue(name, out var scale) ? scale.At(time) : Vector3.One)));
        }

        foreach (var (index, given) in model.Switches.Index())
        {
            if (clip.Switches.TryGetValue(rig.Switches[index].Name, out var value))
                pose.SetSwitch(given.Id, value.At(time));
        }

        return pose;
    }

    private static Affine3d FrameOf(Matrix4x4 m) =>
        new(new(m.M11, m.M12, m.M13), new(m.M21, m.M22, m.M23), new(m.M31, m.M32, m.M33), new(m.M41, m.M42, m.M43));
}
