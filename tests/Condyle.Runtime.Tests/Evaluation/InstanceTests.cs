using System.Numerics;
using Condyle.Tests.Shared;
using CsCheck;

namespace Condyle.Runtime.Tests.Evaluation;

public class InstanceTests
{
    private static readonly CompiledRig Limb = RigCompiler.Compile(Rig.Build(new LimbRig(1)));

    [Fact]
    public void An_instance_stands_at_rest_as_delivered_before_anything_is_set() => Gen.Int.Sample(
        seed =>
        {
            var rig = RigCompiler.Compile(Rig.Build(new LimbRig(seed)));
            AssertRests(rig.NewInstance());
        },
        iter: 300);

    [Fact]
    public void At_rest_both_ends_of_the_switch_and_its_middle_leave_every_joint_as_delivered() => Gen.Int.Sample(
        seed =>
        {
            var instance = RigCompiler.Compile(Rig.Build(new LimbRig(seed))).NewInstance();
            foreach (var amount in new[] { 0f, 0.5f, 1f })
            {
                instance.SetSwitch(0, amount);
                instance.Evaluate();
                AssertRests(instance);
            }
        },
        iter: 100);

    [Fact]
    public void Evaluating_allocates_nothing()
    {
        var rigs = Enumerable.Range(0, 30).Select(seed => RigCompiler.Compile(Rig.Examine(new RandomRig(seed)))).Append(Limb);
        foreach (var rig in rigs)
        {
            var instance = rig.NewInstance();
            new RandomPose(rig, 3).Set(instance);
            instance.Evaluate();
            // The runtime itself may allocate once, when it compiles a kernel anew.
            Assert.Contains(0, Enumerable.Range(0, 5).Select(_ =>
            {
                var before = GC.GetAllocatedBytesForCurrentThread();
                for (var i = 0; i < 100; i++)
                    instance.Evaluate();
                return GC.GetAllocatedBytesForCurrentThread() - before;
            }));
        }
    }

    [Fact]
    public void Setting_and_reading_allocates_nothing()
    {
        var instance = Limb.NewInstance();
        var sum = 0f;
        var before = GC.GetAllocatedBytesForCurrentThread();
        for (var i = 0; i < 100; i++)
        {
            instance.SetMove(0, Vector3.One);
            instance.SetTurn(0, Quaternion.Identity);
            instance.SetSwitch(0, 0.5f);
            sum += instance.JointTranslation(1).X + instance.JointRotation(1).W + instance.JointScale(1).X + instance.JointWorld(1).M41;
            instance.Reset();
        }

        Assert.Equal(0, GC.GetAllocatedBytesForCurrentThread() - before);
        Assert.True(float.IsFinite(sum));
    }

    [Fact]
    public void The_same_input_gives_the_same_output_to_the_last_bit_whatever_came_before() => Gen.Int.Sample(
        seed =>
        {
            var rig = RigCompiler.Compile(Rig.Examine(new RandomRig(seed)));
            var (fresh, used) = (rig.NewInstance(), rig.NewInstance());
            for (var i = 0; i < 3; i++)
                Evaluate(used, new RandomPose(rig, seed + i));
            Evaluate(used, new RandomPose(rig, seed - 1));
            Evaluate(fresh, new RandomPose(rig, seed - 1));
            Assert.Equal(JointsOf(fresh), JointsOf(used));
            used.Reset();
            Assert.Equal(JointsOf(rig.NewInstance()), JointsOf(used));
            used.Evaluate();
            Assert.Equal(JointsOf(rig.NewInstance()), JointsOf(used));
        },
        iter: 100);

    [Fact]
    public void Instances_do_not_touch_each_other_even_on_several_threads()
    {
        var rig = RigCompiler.Compile(Rig.Examine(new RandomRig(4)));
        var alone = Enumerable.Range(0, 16).Select(seed => JointsOf(Evaluate(rig.NewInstance(), new RandomPose(rig, seed)))).ToList();
        var together = new List<(Matrix4x4, Vector3, Quaternion, Vector3)>[16];
        Parallel.For(0, 16, seed =>
        {
            var instance = rig.NewInstance();
            for (var i = 0; i < 50; i++)
                Evaluate(instance, new RandomPose(rig, seed));
            together[seed] = JointsOf(instance);
        });
        Assert.Equal(alone, together);
        Assert.NotEqual(alone[0], alone[1]);
    }

    [Theory]
    [InlineData(float.NaN)]
    [InlineData(float.PositiveInfinity)]
    public void A_number_that_is_not_finite_is_refused_by_the_name_of_the_control_or_switch(float bad)
    {
        var instance = Limb.NewInstance();
        var hand = Limb.ControlIndex("hand");
        Assert.Contains("'hand'", Assert.Throws<ArgumentException>(() => instance.SetMove(hand, new(0, bad, 0))).Message);
        Assert.Contains("'hand'", Assert.Throws<ArgumentException>(() => instance.SetScale(hand, new(0, 0, bad))).Message);
        Assert.Contains("'hand'", Assert.Throws<ArgumentException>(() => instance.SetTurn(hand, new(0, 0, bad, 1))).Message);
        Assert.Contains("'hand.fk'", Assert.Throws<ArgumentException>(() => instance.SetSwitch(0, bad)).Message);
        AssertRests(instance);
    }

    [Fact]
    public void A_quaternion_without_direction_is_refused_and_a_long_one_is_taken_as_its_unit()
    {
        var instance = Limb.NewInstance();
        var turn = Limb.ControlIndex("turn_elbow");
        Assert.Contains("'turn_elbow'", Assert.Throws<ArgumentException>(() => instance.SetTurn(turn, default)).Message);

        instance.SetSwitch(0, 1);
        instance.SetTurn(turn, new Quaternion(0.6f, 0, 0, 0.8f));
        instance.Evaluate();
        var unit = JointsOf(instance);
        instance.SetTurn(turn, new Quaternion(0.6f, 0, 0, 0.8f) * 4);
        instance.Evaluate();
        Assert.Equal(unit, JointsOf(instance));
    }

    [Fact]
    public void A_switch_beyond_its_ends_is_taken_as_the_nearer_end()
    {
        var instance = Limb.NewInstance();
        instance.SetSwitch(0, 3);
        instance.Evaluate();
        Assert.True(instance.LabelVisible(1));
        instance.SetSwitch(0, -3);
        instance.Evaluate();
        Assert.False(instance.LabelVisible(1));
    }

    [Fact]
    public void What_is_not_there_is_refused_by_index()
    {
        var instance = Limb.NewInstance();
        Assert.Throws<ArgumentOutOfRangeException>(() => instance.SetMove(Limb.Controls.Count, default));
        Assert.Throws<ArgumentOutOfRangeException>(() => instance.SetSwitch(-1, 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => instance.JointWorld(Limb.Joints.Count));
    }

    [Fact]
    public void Degenerate_input_gives_finite_output()
    {
        var instance = RigCompiler.Compile(Rig.Build(new LimbRig(1, scales: true))).NewInstance();
        var (hand, pole, root) = (Limb.ControlIndex("hand"), Limb.ControlIndex("pole"), Limb.ControlIndex("limb_root"));
        Vector3[] moves = [Vector3.Zero, new(1e6f, 0, 0), Offset("wrist", "shoulder"), Offset("wrist", "elbow"), new(-1e-20f, 0, 0)];
        Vector3[] scales = [Vector3.One, Vector3.Zero, new(0, 1, 1), new(1, 0, 0), new(-1, 1, 1), Vector3.One * 1e-20f, new(1e5f, 1e-5f, 1)];
        foreach (var move in moves)
        {
            foreach (var scale in scales)
            {
                instance.SetMove(hand, move);
                instance.SetMove(pole, move);
                instance.SetScale(root, scale);
                instance.SetSwitch(0, 0.5f);
                instance.Evaluate();
                Assert.All(JointsOf(instance), joint => Assert.True(IsFinite(joint), $"{move} {scale}: {joint}"));
            }
        }
    }

    private static Vector3 Offset(string from, string to)
    {
        var rest = Limb.NewInstance();
        return rest.JointWorld(Limb.JointIndex(to)).Translation - rest.JointWorld(Limb.JointIndex(from)).Translation;
    }

    private static bool IsFinite((Matrix4x4 World, Vector3 Move, Quaternion Turn, Vector3 Scale) joint) =>
        float.IsFinite(joint.Turn.Length()) && float.IsFinite(joint.Move.Length()) && float.IsFinite(joint.Scale.Length())
        && float.IsFinite(joint.World.Translation.Length()) && float.IsFinite(joint.World.GetDeterminant());

    private static RigInstance Evaluate(RigInstance instance, RandomPose pose)
    {
        pose.Set(instance);
        instance.Evaluate();
        return instance;
    }

    private static List<(Matrix4x4 World, Vector3 Move, Quaternion Turn, Vector3 Scale)> JointsOf(RigInstance instance) =>
        [.. instance.Rig.Joints.Select(joint => (
            instance.JointWorld(joint.Index), instance.JointTranslation(joint.Index), instance.JointRotation(joint.Index), instance.JointScale(joint.Index)))];

    private static void AssertRests(RigInstance instance)
    {
        foreach (var joint in instance.Rig.Joints)
        {
            // A root three metres away leaves 2.4e-7 m of a float; the joints hang four deep.
            Assert.True((instance.JointTranslation(joint.Index) - joint.RestTranslation).Length() < 3e-6f, $"{joint.Name} {instance.JointTranslation(joint.Index)} {joint.RestTranslation}");
            Assert.True(1 - MathF.Abs(Quaternion.Dot(instance.JointRotation(joint.Index), joint.RestRotation)) < 1e-6f, $"{joint.Name} {instance.JointRotation(joint.Index)} {joint.RestRotation}");
            Assert.Equal(joint.RestScale, instance.JointScale(joint.Index));
        }
    }
}
