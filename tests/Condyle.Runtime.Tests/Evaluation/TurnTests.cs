using System.Numerics;
using Condyle.Evaluation;
using Condyle.Runtime.Matching;

namespace Condyle.Runtime.Tests.Evaluation;

/// <summary>Aims, twists, falloffs and drives of some channels in the runtime, where the property tests don't go.</summary>
public class TurnTests
{
    [Fact]
    public void Evaluating_them_allocates_nothing()
    {
        var instance = DefinedRig.Compile(Define).NewInstance();
        Pull(instance, Quaternion.CreateFromYawPitchRoll(0.3f, 1, -0.5f), new(0.1f, 0.2f, 0.3f));
        instance.Evaluate();
        var before = GC.GetAllocatedBytesForCurrentThread();
        for (var i = 0; i < 100; i++)
            instance.Evaluate();
        Assert.Equal(0, GC.GetAllocatedBytesForCurrentThread() - before);
    }

    [Fact]
    public void Rest_holds_wherever_the_character_stands()
    {
        var rig = DefinedRig.Compile(Define);
        var instance = rig.NewInstance();
        foreach (var (by, turn) in new[] { (Vector3.Zero, 0f), (new(0.3f, -0.2f, 0.7f), 0.5f), (new(-3, 1, 2), 2), (new(1, 0, 1), -3) })
        {
            instance.SetMove(rig.ControlIndex("world"), by);
            instance.SetTurn(rig.ControlIndex("world"), Quaternion.CreateFromAxisAngle(Vector3.Normalize(new(1, 2, 3)), turn));
            instance.Evaluate();
            foreach (var joint in rig.Joints.Skip(1))
            {
                Assert.True((instance.JointTranslation(joint.Index) - joint.RestTranslation).Length() < 5e-6f, joint.Name);
                var off = Quaternion.Conjugate(joint.RestRotation) * instance.JointRotation(joint.Index);
                Assert.True(new Vector3(off.X, off.Y, off.Z).Length() < 5e-6f, $"{joint.Name} is turned by {off} from rest.");
            }
        }
    }

    [Fact]
    public void Degenerate_input_gives_finite_output_and_the_same_each_time()
    {
        var rig = DefinedRig.Compile(Define);
        var (one, other) = (rig.NewInstance(), rig.NewInstance());
        Vector3[] moves = [Vector3.Zero, new(0, 0, -1), new(0, 0, -2), new(1e6f, 0, 0), new(0, -1e6f, 1), new(1e-20f, 0, 0)];
        Quaternion[] turns = [Quaternion.Identity, new(1, 0, 0, 0), new(0, 1, 0, 0), new(0, 0, -1, 0), new(0.6f, 0.8f, 0, 0)];
        foreach (var move in moves)
        {
            foreach (var turn in turns)
            {
                foreach (var scale in new[] { Vector3.One, Vector3.Zero, new(0, 1, 1), new(-1, 1, 1), Vector3.One * 1e-20f, new(1e5f, 1e-5f, 1) })
                {
                    foreach (var instance in new[] { one, other })
                    {
                        Pull(instance, turn, move);
                        instance.SetScale(rig.ControlIndex("world"), scale);
                        instance.Evaluate();
                    }

                    foreach (var joint in rig.Joints)
                    {
                        Assert.True(float.IsFinite(one.JointRotation(joint.Index).Length() + one.JointTranslation(joint.Index).Length()), $"{move} {turn} {scale}: {joint.Name}");
                        Assert.Equal(one.JointRotation(joint.Index), other.JointRotation(joint.Index));
                    }
                }
            }
        }
    }

    /// <summary>What is turned needs to be no joint and no control: nobody but the falloff reads the channels of a group that is driven or blended.</summary>
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void A_falloff_shares_the_turn_of_a_group_that_a_sentence_turns(bool isBlended)
    {
        var rig = DefinedRig.Compile(rig =>
        {
            var root = rig.Skeleton("winch").Root("rope_0");
            var tip = root.Child("rope_1", at: new(0, 0.5f, 0));
            var crank = rig.Control("crank").PlacedAt(root).Lock(Channels.Scale);
            var drum = rig.Group("drum_group").PlacedAt(root);
            if (isBlended)
                rig.Blend(drum).From(crank, 1);
            else
                rig.Drive(drum).ByChannels(crank);
            rig.Falloff(rig.Chain(root, tip)).From(drum);
        });
        var live = rig.NewInstance();
        live.SetTurn(0, Quaternion.CreateFromAxisAngle(Vector3.UnitZ, 1));
        live.Evaluate();
        var (tip, should) = (live.JointWorld(1), new LivePose(rig.LimbTable, live).Frames.WorldOf(rig.LimbTable.Model.Nodes.Last(node => node.IsExported)));
        Assert.True(((Vector3d)tip.Translation - should.Origin).Length < 1e-5, $"the tip is at {tip.Translation} and should be at {should.Origin}");
        Assert.True(Math.Abs(tip.Translation.X) > 0.2f);
    }

    private static void Pull(RigInstance instance, Quaternion turn, Vector3 by)
    {
        foreach (var control in instance.Rig.Controls.Where(control => control.Name != "world"))
        {
            instance.SetMove(control.Index, by);
            instance.SetTurn(control.Index, turn);
        }
    }

    /// <summary>A crane's lamp, an arm and a rope, on turned frames under a root away from the origin.</summary>
    private static void Define(RigDraft rig)
    {
        var frame = Quaternion.CreateFromYawPitchRoll(0.4f, 1.1f, -0.7f);
        var pelvis = rig.Skeleton("s").Root("pelvis", JointRole.Helper, new(1, 2, -1), frame);
        var world = rig.Control("world").Unlock(Channels.Scale);
        rig.Drive(pelvis).ByChannels(world).KeepingOffset().WithScale();

        var lamp = pelvis.Child("lamp", at: new(0, 0, 0.5f), turned: frame);
        var ahead = lamp.Child("ahead", JointRole.Helper, new(0, 0, 1));
        var above = lamp.Child("above", JointRole.Helper, new(0, 1, 0));
        rig.Aim(lamp).At(rig.Control("gull").Under(world).PlacedAt(ahead)).Up(rig.Control("sky").Under(world).PlacedAt(above));
        rig.Drive(lamp).ByChannels(rig.Control("boat").Under(world).PlacedAt(lamp)).KeepingOffset().Writing(Channels.Move);

        var shoulder = pelvis.Child("shoulder", at: new(0.2f, 0, 0), turned: frame);
        var back = shoulder.Child("back", JointRole.Twist, new(0, 0.1f, 0), frame);
        var elbow = shoulder.Child("elbow", at: new(0, 0.3f, 0), turned: frame);
        var twist = elbow.Child("twist", JointRole.Twist, new(0.1f, 0, 0), frame);
        var wrist = twist.Child("wrist", at: new(0, 0.1f, 0), turned: frame);
        rig.Drive(shoulder).ByChannels(rig.Control("turn_shoulder").Under(world).PlacedAt(shoulder)).Writing(Channels.Turn);
        rig.Drive(wrist).ByChannels(rig.Control("hand").Under(world).PlacedAt(wrist));
        rig.Twist(back).Between(pelvis, shoulder);
        rig.Twist(twist).Between(elbow, wrist);

        var joint = pelvis.Child("rope_0", at: new(0, -0.2f, 0));
        var root = joint;
        for (var i = 1; i < 5; i++)
            joint = joint.Child($"rope_{i}", at: new(0, -0.1f, 0.01f * i), turned: frame);
        rig.Falloff(rig.Chain(root, joint)).From(rig.Control("curl").Under(world).PlacedAt(root)).Sharing(0.2f, 1, 2).WithMove();
    }
}
