using System.Numerics;
using Condyle.Evaluation;
using Condyle.Runtime.Matching;

namespace Condyle.Runtime.Tests.Evaluation;

public class SolverTests
{
    public static TheoryData<float> Bends => [0, 1e-6f, 1e-4f, 1e-3f, 0.02f, 0.3f];

    [Theory]
    [MemberData(nameof(Bends))]
    public void The_rest_of_straight_and_of_bent_chains_holds_wherever_the_character_stands(float bend)
    {
        var rig = RigCompiler.Compile(Rig.Build(new SolverRig(bend)));
        var instance = rig.NewInstance();
        foreach (var (by, turn) in new[] { (Vector3.Zero, 0f), (new(0.3f, -0.2f, 0.7f), 0.5f), (new(-3, 1, 2), 2), (new(1, 0, 1), -3) })
        {
            var world = Quaternion.CreateFromAxisAngle(Vector3.Normalize(new(1, 2, 3)), turn);
            instance.SetMove(rig.ControlIndex("world"), by);
            instance.SetTurn(rig.ControlIndex("world"), world);
            instance.Evaluate();
            foreach (var joint in rig.Joints.Skip(1))
            {
                Assert.True((instance.JointTranslation(joint.Index) - joint.RestTranslation).Length() < 5e-6f, $"{joint.Name} {instance.JointTranslation(joint.Index)} {joint.RestTranslation}");
                var off = Quaternion.Conjugate(joint.RestRotation) * instance.JointRotation(joint.Index);
                Assert.True(new Vector3(off.X, off.Y, off.Z).Length() < 5e-6f, $"{joint.Name} is turned by {off} from rest.");
            }
        }
    }

    [Theory]
    [InlineData(1e-6f)]
    [InlineData(-1.5e-6f)]
    [InlineData(4e-6f)]
    public void A_bent_limb_follows_a_goal_that_is_a_micrometre_from_rest(float pull)
    {
        // Straight but for 0.3 rad, the knee goes five times as far as the ankle; a distance that was taken as that of rest would leave it where it is.
        var rig = RigCompiler.Compile(Rig.Build(new SolverRig(0.3f)));
        var instance = rig.NewInstance();
        var joints = rig.LimbTable.Model.Nodes.Where(node => node.IsExported).ToList();
        var (hip, ankle) = (rig.JointIndex("leg_0"), rig.JointIndex("leg_2"));
        var line = Vector3.Normalize(instance.JointWorld(ankle).Translation - instance.JointWorld(hip).Translation);
        instance.SetMove(rig.ControlIndex("foot"), Vector3.Transform(line * pull, Quaternion.Conjugate(Quaternion.CreateFromRotationMatrix(instance.JointWorld(ankle)))));
        instance.Evaluate();
        var exact = new LivePose(rig.LimbTable, instance).Frames.WorldOf(joints[hip]).Rotation;
        var actual = Quaternion.CreateFromRotationMatrix(instance.JointWorld(hip));
        Assert.InRange(Quaterniond.Angle(exact, actual), 0, 4e-6); // 8e-6 at least where it stays; two metres from the origin a float of the goal rounds to 1e-6
    }

    [Fact]
    public void Solving_allocates_nothing()
    {
        var instance = RigCompiler.Compile(Rig.Build(new SolverRig(0.1f))).NewInstance();
        Pull(instance, new(0.1f, 0.2f, 0.1f));
        instance.Evaluate();
        var before = GC.GetAllocatedBytesForCurrentThread();
        for (var i = 0; i < 100; i++)
            instance.Evaluate();
        Assert.Equal(0, GC.GetAllocatedBytesForCurrentThread() - before);
    }

    [Theory]
    [MemberData(nameof(Bends))]
    public void Degenerate_input_gives_finite_output(float bend)
    {
        var rig = RigCompiler.Compile(Rig.Build(new SolverRig(bend)));
        var instance = rig.NewInstance();
        Vector3[] moves = [Vector3.Zero, new(0, 0.8f, 0), new(0, 0.4f, 0), new(0, 1.6f, 0), new(1e6f, 0, 0), new(0, -1e6f, 1), new(1e-20f, 0, 0)];
        foreach (var move in moves)
        {
            foreach (var scale in new[] { Vector3.One, Vector3.Zero, new(0, 1, 1), new(-1, 1, 1), Vector3.One * 1e-20f, new(1e5f, 1e-5f, 1) })
            {
                Pull(instance, move);
                instance.SetScale(rig.ControlIndex("world"), scale);
                instance.Evaluate();
                foreach (var joint in rig.Joints)
                    Assert.True(float.IsFinite(instance.JointRotation(joint.Index).Length() + instance.JointTranslation(joint.Index).Length()), $"{move} {scale}: {joint.Name}");
            }
        }
    }

    [Fact]
    public void A_limb_comes_straight_without_trembling()
    {
        // The goal goes away from the root far beyond reach: the knee's angle falls all the way, and ends at nothing.
        var rig = RigCompiler.Compile(Rig.Build(new SolverRig(0.3f)));
        var instance = rig.NewInstance();
        var (hip, knee, ankle) = (rig.JointIndex("leg_0"), rig.JointIndex("leg_1"), rig.JointIndex("leg_2"));
        Vector3 At(int joint) => instance.JointWorld(joint).Translation;
        var line = Vector3.Normalize(At(ankle) - At(hip));
        var back = Quaternion.Conjugate(Quaternion.CreateFromRotationMatrix(instance.JointWorld(ankle)));
        var last = MathF.PI;
        for (var pull = 0f; pull < 1; pull += 0.005f)
        {
            instance.SetMove(rig.ControlIndex("foot"), Vector3.Transform(line * pull, back));
            instance.Evaluate();
            var (thigh, shin) = (At(knee) - At(hip), At(ankle) - At(knee));
            var angle = MathF.Atan2(Vector3.Cross(thigh, shin).Length(), Vector3.Dot(thigh, shin));
            Assert.True(angle <= last + 1e-5f, $"{pull}: {angle} after {last}");
            last = angle;
        }

        Assert.InRange(last, 0, 1e-4f);
    }

    private static void Pull(RigInstance instance, Vector3 by)
    {
        foreach (var control in instance.Rig.Controls.Where(control => control.Name != "world"))
            instance.SetMove(control.Index, control.Name.EndsWith("_node", StringComparison.Ordinal) ? by * (control.Index % 3) : by);
        instance.SetSwitch(0, 1);
    }
}
