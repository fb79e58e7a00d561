using CsCheck;
using Condyle.Evaluation;
using Condyle.Model;
using Condyle.Tests.Shared;

namespace Condyle.Runtime.Tests.Evaluation;

/// <summary>Holds the float runtime to the double reference over random rigs in random poses.</summary>
public class ReferenceTests
{
    /// <summary>What the design grants a character of 1.8 m. The random rigs are larger and stand up to 3.5 m from the origin; errors seen: 2.2 µm, 0.0003°.</summary>
    private const double Metres = 10e-6;
    private const double Radians = 0.0005 * Math.PI / 180;

    /// <summary>How far the input strays to see where the reference is stable.</summary>
    private const float Jitter = 1e-6f;

    /// <summary>Where the strayed input moves the reference further than this, it is near a place where it can't be continuous, and a float can't follow it.</summary>
    private const double Unstable = 100 * Jitter;

    [Fact]
    public void The_runtime_equals_the_reference_wherever_the_reference_is_stable()
    {
        var (compared, skipped) = (0, 0);
        Gen.Int.Sample(
            seed =>
            {
                var cases = CompareJoints(seed);
                Interlocked.Add(ref compared, cases.Compared);
                Interlocked.Add(ref skipped, cases.Skipped);
            },
            iter: 400);
        Assert.True(skipped < 0.1 * compared, $"{skipped} joints were skipped and {compared} compared: the test would prove little.");
    }

    [Fact]
    public void Labels_show_as_in_the_reference() => Gen.Int.Sample(
        seed =>
        {
            var (rig, live, pose) = Evaluate(seed);
            var exact = ReferenceEvaluator.Evaluate(rig.Model, RestPose.Of(rig.Model), pose.For(rig.Model, 0, 0));
            Assert.All(rig.Model.Labels.Index(), label => Assert.Equal(exact.IsVisible(label.Item), live.LabelVisible(label.Index)));
            Assert.All(rig.Model.Labels.Index(), label =>
            {
                label.Item.Parent.TryKnown(out var parent);
                if (!IsNear(exact.WorldOf(parent!), FrameOf(live.LabelWorld(label.Index))))
                    Assert.True(IsUnstable(seed, pose, model => model.Labels[label.Index].Parent.TryKnown(out var strayed) ? strayed! : throw new InvalidOperationException(), exact.WorldOf(parent!)));
            });
        },
        iter: 100);

    private static (int Compared, int Skipped) CompareJoints(int seed)
    {
        var (rig, live, pose) = Evaluate(seed);
        var exact = ReferenceEvaluator.Evaluate(rig.Model, RestPose.Of(rig.Model), pose.For(rig.Model, 0, 0));
        var joints = JointsOf(rig.Model);
        var strayed = StrayedWorlds(seed, pose);
        var skipped = 0;
        for (var i = 0; i < joints.Count; i++)
        {
            var world = exact.WorldOf(joints[i]);
            if (strayed.Any(worlds => !IsNear(world, worlds[i], Unstable, Unstable)))
            {
                skipped++;
                continue;
            }

            Assert.True(IsNear(world, FrameOf(live.JointWorld(i))), $"'{joints[i].Name}' stands at {FrameOf(live.JointWorld(i))} and not at {world}.");

            // What an engine reads, under the exact parent: an error in a channel counts by what it moves.
            joints[i].Parent.TryKnown(out var parent);
            var above = parent is null ? Affine3d.Identity : exact.WorldOf(parent);
            var channels = new Trs(live.JointTranslation(i), live.JointRotation(i), live.JointScale(i));
            Assert.True(IsNear(above * exact.ChannelsOf(joints[i]).ToAffine(), above * channels.ToAffine()), $"'{joints[i].Name}' has the channels {channels} and not {exact.ChannelsOf(joints[i])}.");
        }

        return (joints.Count - skipped, skipped);
    }

    private static (Rig Rig, RigInstance Live, RandomPose Pose) Evaluate(int seed)
    {
        var rig = Rig.Examine(new RandomRig(seed));
        var compiled = RigCompiler.Compile(rig);
        var pose = new RandomPose(compiled, seed ^ 77);
        var live = compiled.NewInstance();
        pose.Set(live);
        live.Evaluate();
        return (rig, live, pose);
    }

    /// <summary>Where the joints are when both the rig's rest and the pose stray, three times.</summary>
    private static List<List<Affine3d>> StrayedWorlds(int seed, RandomPose pose) =>
        [.. Strayed(seed, pose).Select(strayed => JointsOf(strayed.Model).Select(strayed.Pose.WorldOf).ToList())];

    private static bool IsUnstable(int seed, RandomPose pose, Func<RigModel, RigNode> which, Affine3d exact) =>
        Strayed(seed, pose).Any(strayed => !IsNear(exact, strayed.Pose.WorldOf(which(strayed.Model)), Unstable, Unstable));

    private static IEnumerable<(RigModel Model, ReferencePose Pose)> Strayed(int seed, RandomPose pose)
    {
        var model = Rig.Examine(new RandomRig(seed, Jitter)).Model;
        var rest = RestPose.Of(model);
        return Enumerable.Range(1, 3).Select(time => (model, ReferenceEvaluator.Evaluate(model, rest, pose.For(model, Jitter, seed + time))));
    }

    private static List<RigNode> JointsOf(RigModel model) => [.. model.Nodes.Where(node => node.IsExported)];

    private static bool IsNear(Affine3d a, Affine3d b, double metres = Metres, double radians = Radians) =>
        (a.Origin - b.Origin).Length <= metres && Quaterniond.Angle(a.Rotation, b.Rotation) <= radians;

    private static Affine3d FrameOf(System.Numerics.Matrix4x4 m) =>
        new(new(m.M11, m.M12, m.M13), new(m.M21, m.M22, m.M23), new(m.M31, m.M32, m.M33), new(m.M41, m.M42, m.M43));
}
