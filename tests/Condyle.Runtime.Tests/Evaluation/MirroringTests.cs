using System.Numerics;
using Condyle.Evaluation;
using Condyle.Model;
using Condyle.Tests.Shared;

namespace Condyle.Runtime.Tests.Evaluation;

/// <summary>Controls that mirror their counterparts: the same channels on both sides make mirror images, however the joints' frames mirror.</summary>
public class MirroringTests
{
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void The_same_channels_on_both_sides_make_mirror_images_in_the_reference_and_the_runtime(bool behaves)
    {
        for (var seed = 0; seed < 100; seed++)
        {
            var rig = Rig.Examine(new MirroredArms(seed, behaves));
            var instance = RigCompiler.Compile(rig).NewInstance();
            AssertImages(instance, rig.Model, behaves, $"{seed} at rest");
            var choices = new RandomChoices(seed ^ 5);
            foreach (var control in instance.Rig.Controls.Where(control => control.Name.EndsWith("_left", StringComparison.Ordinal)))
            {
                var (move, turn, grow) = (choices.Vector(0.2f), choices.Turn(MathF.PI), Vector3.One * choices.Between(0.8f, 1.2f));
                foreach (var index in new[] { control.Index, instance.Rig.ControlIndex(control.Name.Replace("_left", "_right", StringComparison.Ordinal)) })
                {
                    instance.SetMove(index, move);
                    instance.SetTurn(index, turn);
                    if (control.Name.StartsWith("shoulder", StringComparison.Ordinal))
                        instance.SetScale(index, grow);
                }
            }

            instance.Evaluate();
            AssertImages(instance, rig.Model, behaves, $"{seed}");
        }
    }

    [Fact]
    public void A_mirrored_limb_can_be_matched_too()
    {
        var instance = RigCompiler.Compile(Rig.Examine(new MirroredArms(3, behaves: true))).NewInstance();
        foreach (var hand in new[] { "hand_left", "hand_right" })
        {
            instance.SetMove(instance.Rig.ControlIndex(hand), new(-0.1f, 0.05f, 0.12f));
            instance.SetTurn(instance.Rig.ControlIndex(hand), Quaternion.CreateFromYawPitchRoll(0.4f, 0.2f, -0.3f));
        }

        foreach (var limb in instance.Rig.Limbs)
        {
            Assert.True(instance.MatchTurns(limb.Index).Holds);
            instance.SetMove(limb.Goal, Vector3.Zero);
            instance.SetTurn(limb.Goal, Quaternion.Identity);
            var match = instance.MatchGoal(limb.Index);
            Assert.True(match.Holds, string.Join(" ", match.Notes));
        }

        Assert.True(Vector3.Distance(instance.ControlMove(instance.Rig.ControlIndex("hand_left")), instance.ControlMove(instance.Rig.ControlIndex("hand_right"))) < 1e-5f);
        Assert.True(Vector3.Distance(new(-0.1f, 0.05f, 0.12f), instance.ControlMove(instance.Rig.ControlIndex("hand_right"))) < 1e-5f);
    }

    private static void AssertImages(RigInstance instance, RigModel model, bool behaves, string what)
    {
        var pose = new Pose();
        foreach (var (index, control) in model.Nodes.Where(node => node.Kind == NodeKind.Control).Index())
            pose.Set(control.Id, new Trs(instance.ControlMove(index), (Quaterniond)instance.ControlTurn(index), instance.ControlScale(index)));
        var exact = ReferenceEvaluator.Evaluate(model, RestPose.Of(model), pose);
        foreach (var left in instance.Rig.Joints.Where(joint => joint.Name.EndsWith("_left", StringComparison.Ordinal)))
        {
            var right = instance.Rig.JointIndex(left.Name.Replace("_left", "_right", StringComparison.Ordinal));
            var (l, r) = (instance.JointWorld(left.Index), instance.JointWorld(right));
            AssertImage(Affine(l), Affine(r), behaves, 5e-6, $"{left.Name} of {what}");
            AssertImage(World(left.Name), World(instance.Rig.Joints[right].Name), behaves, 1e-6, $"{left.Name} of {what} in the reference");
        }

        Affine3d World(string name) => exact.WorldOf(model.Nodes.Single(node => node.IsExported && node.Name.ToString() == name));
    }

    private static void AssertImage(Affine3d left, Affine3d right, bool behaves, double tolerance, string what)
    {
        // The convention turns round X alone, or all axes of the mirrored frame.
        var others = behaves ? -1 : 1;
        Assert.True((Over(left.Origin) - right.Origin).Length < tolerance, $"{what}: {left.Origin} and {right.Origin}");
        foreach (var (image, axis) in new[] { (Over(left.X) * -1, right.X), (Over(left.Y) * others, right.Y), (Over(left.Z) * others, right.Z) })
            Assert.True((image - axis).Length < tolerance, $"{what}: {left} and {right}");
    }

    private static Vector3d Over(Vector3d v) => v with { X = -v.X };

    private static Affine3d Affine(Matrix4x4 world) => new(
        new Vector3d(world.M11, world.M12, world.M13), new Vector3d(world.M21, world.M22, world.M23), new Vector3d(world.M31, world.M32, world.M33), world.Translation);

    /// <summary>Two arms with IK and FK whose right controls mirror the left ones. The shoulders scale; the switch is at FK for one half of the seeds.</summary>
    private sealed class MirroredArms(int seed, bool behaves) : IRigDefinition
    {
        public void Define(RigDraft rig)
        {
            var choices = new RandomChoices(seed);
            Vector3[] at = [new(0.2f, 1.4f, 0.02f), new(0.45f, 1.38f, -0.03f), new(0.7f, 1.3f, 0.04f)];
            Quaternion[] turned = [choices.Turn(MathF.PI), choices.Turn(MathF.PI), choices.Turn(MathF.PI)];
            var root = rig.Skeleton("arms").Root("chest", JointRole.Helper, at: new Vector3(0, 1.2f, 0));
            var counterparts = new Dictionary<string, Control>();
            foreach (var side in Side.Both)
            {
                Control Add(string name, Node parent, Func<Control, Control> place)
                {
                    var control = rig.Control($"{name}_{side}").Under(parent);
                    if (side == Side.Left)
                        return counterparts[name] = place(control);
                    return control.Mirroring(counterparts[name]);
                }

                var joints = Joints(root, side, at, turned);
                var arm = rig.Chain(joints[0], joints[2]);
                var shoulder = Add("shoulder", root, control => control.PlacedAt(joints[0])).Unlock(Channels.Scale);
                var parts = rig.Group($"arm_{side}_group").PlacedAt(joints[0]);
                rig.Drive(parts).ByMatrix(shoulder).KeepingOffset();

                var ik = arm.Copy("ik").Under(parts);
                var hand = Add("hand", shoulder, control => control.PlacedAt(joints[2]));
                rig.TwoBone(ik).Reach(hand).Face(Add("elbow_pole", shoulder, control => control.PlacedAt(ik.PolePoint(0.4f))));

                var fk = arm.Copy("fk").Under(parts);
                var above = shoulder;
                foreach (var joint in joints)
                {
                    above = Add($"turn_{joint.Name.Split('_')[0]}", above, control => control.PlacedAt(joint));
                    rig.Drive(fk.Of(joint)).ByChannels(above).KeepingOffset();
                }

                var amount = hand.Switch("fk", seed % 2);
                rig.Blend(arm).From(ik, amount.Inverse).From(fk, amount);
            }
        }

        private Joint[] Joints(Joint root, Side side, Vector3[] at, Quaternion[] turned)
        {
            var joints = new Joint[at.Length];
            var (above, aboveAt, aboveTurned) = (root, new Vector3(0, 1.2f, 0), Quaternion.Identity);
            foreach (var (i, name) in new[] { "shoulder", "elbow", "wrist" }.Index())
            {
                var place = side == Side.Left ? at[i] : MirroredRest.Of(at[i]);
                var frame = side == Side.Left ? turned[i] : behaves ? MirroredRest.Behaving(turned[i]) : MirroredRest.Facing(turned[i]);
                var back = Quaternion.Inverse(aboveTurned);
                joints[i] = above.Child($"{name}_{side}", at: Vector3.Transform(place - aboveAt, back), turned: back * frame);
                (above, aboveAt, aboveTurned) = (joints[i], place, frame);
            }

            return joints;
        }
    }
}
