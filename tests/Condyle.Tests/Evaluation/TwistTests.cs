using System.Numerics;
using Condyle.Evaluation;
using CsCheck;

namespace Condyle.Tests.Evaluation;

public sealed class TwistTests
{
    /// <summary>Turns of the controls of shoulder and elbow, and of the wrist: about its bone, and about a direction across it.</summary>
    private static readonly Gen<(Quaterniond Shoulder, Quaterniond Elbow, double Roll, Vector3d Across, double Swing)> Turns =
        Gen.Select(Any.Rotation, Any.Rotation, Gen.Double[-3, 3], Any.Direction, Gen.Double[-2.5, 2.5]);

    [Fact]
    public void Rest_holds() => Gen.Select(ArmSetting.Any, Gen.Float[-1, 1], Gen.Bool).Sample((setting, share, isShared) =>
        Forearm(setting, twist => isShared ? twist.Sharing(share, share) : twist).AssertRestHolds(1e-5));

    [Fact]
    public void A_twist_joint_halfway_takes_half_of_the_wrist_s_roll_and_none_of_its_swing_whatever_the_arm_does() => Gen.Select(ArmSetting.Any, Turns).Sample((setting, turns) =>
        AssertTurned(Forearm(setting), "elbow_twist", "elbow", 0.5, turns));

    [Fact]
    public void Shares_can_be_given_and_below_zero_they_turn_back() => Gen.Select(ArmSetting.Any, Turns, Gen.Float[-1.5f, 1.5f]).Sample((setting, turns, share) =>
        AssertTurned(Forearm(setting, twist => twist.Sharing(share, 0)), "elbow_twist", "elbow", share, turns));

    [Fact]
    public void An_end_that_hangs_below_the_twist_joints_still_lands_where_its_source_is() => Gen.Select(ArmSetting.Any, Turns).Sample((setting, turns) =>
    {
        var rig = Forearm(setting);
        var pose = Posed(rig, turns);
        foreach (var joint in new[] { "shoulder", "elbow", "wrist" })
            Near.Equal(pose.WorldOf(rig["turn_" + joint]).Rotation, pose.WorldOf(rig[joint]).Rotation, 1e-6);
    });

    [Fact]
    public void Between_joints_in_a_row_the_turns_do_not_add_up() => Gen.Select(Any.Rotation.Array[4], Gen.Double[-3, 3], Gen.Bool).Sample((frames, roll, beside) =>
    {
        var rig = Row(frames, beside, twist => twist);
        var axis = Bone(rig, "elbow", "wrist");
        var pose = rig.Evaluate(new Pose().Set(rig["hand"].Id, rig.Moved("hand", Vector3d.Zero, Quaterniond.About(axis, roll))));
        Near.Equal(Quaterniond.About(axis, roll / 4), TurnOf(rig, pose, "twist_1"), 1e-6);
        Near.Equal(Quaterniond.About(axis, roll * 3 / 4), TurnOf(rig, pose, "twist_2"), 1e-6);
        Near.Equal(Quaterniond.About(axis, roll), TurnOf(rig, pose, "wrist"), 1e-6);
    });

    /// <summary>Joints that follow a shoulder which rolls: the first one isn't rolled at all, the second by the third of the way that it lies along.</summary>
    [Fact]
    public void Below_the_end_joints_are_turned_back_by_how_far_they_are_from_the_bone_s_far_end() => Gen.Select(Any.Rotation.Array[4], Gen.Double[-3, 3], Any.Direction, Gen.Double[-2.5, 2.5]).Sample((frames, roll, direction, angle) =>
    {
        var rig = UpperArm(frames);
        var axis = Bone(rig, "shoulder", "elbow");
        if (direction.Across(axis).Direction is not { } across)
            return;
        var swing = Quaterniond.About(across, angle);
        var pose = rig.Evaluate(new Pose().Set(rig["turn"].Id, rig.Moved("turn", Vector3d.Zero, swing * Quaterniond.About(axis, roll))));
        Near.Equal(swing, TurnOf(rig, pose, "twist_1"), 1e-5);
        Near.Equal(swing * Quaterniond.About(axis, roll / 3), TurnOf(rig, pose, "twist_2"), 1e-5);
        Near.Equal(swing * Quaterniond.About(axis, roll), TurnOf(rig, pose, "elbow"), 1e-5);
        rig.AssertRestHolds(1e-6);
    });

    [Fact]
    public void Mirrored_arms_twist_mirrored_whatever_their_frames_are() => Gen.Select(ArmSetting.Any, Any.Rotation.Array[6], Any.Rotation).Sample((setting, frames, turn) =>
    {
        var left = setting with { Origin = setting.Origin with { X = 0 }, Facing = Quaterniond.Identity, Scale = Vector3d.One, Side = Side.Left };
        var right = left with { Side = Side.Right, Frames = frames };
        var (one, other) = (Forearm(left), Forearm(right));
        var small = Slerp.Between(Quaterniond.Identity, turn, 0.9);
        Quaterniond Turned(TestRig rig, Quaterniond by) => TurnOf(rig, rig.Evaluate(new Pose().Set(rig["turn_wrist"].Id, rig.Moved("turn_wrist", Vector3d.Zero, by))), "elbow_twist");
        Near.Equal(TailSetting.Mirror(Turned(one, small)), Turned(other, TailSetting.Mirror(small)), 1e-4);
    });

    [Fact]
    public void At_half_a_turn_the_roll_jumps_to_the_other_side()
    {
        var rig = Row([.. Enumerable.Repeat(Quaterniond.Identity, 4)], beside: true, twist => twist.Sharing(0.5f, 0.5f));
        double Degrees(double roll)
        {
            var pose = rig.Evaluate(new Pose().Set(rig["hand"].Id, Trs.Identity with { Rotation = Quaterniond.About(Vector3d.UnitY, roll * Math.PI / 180) }));
            return MeasuredAngle.About(Axis.Y, pose.WorldOf(rig["twist_1"]).Rotation);
        }

        Near.Equal(89.5, Degrees(179), 1e-6);
        Near.Equal(90, Degrees(180), 1e-6);
        Near.Equal(-89.5, Degrees(181), 1e-6);
    }

    [Fact]
    public void A_bone_of_no_length_and_a_swing_of_half_a_turn_have_no_roll()
    {
        var rig = new TestRig(draft =>
        {
            var elbow = draft.Skeleton("s").Root("elbow");
            var twist = elbow.Child("twist", JointRole.Twist);
            draft.Drive(elbow.Child("wrist")).ByChannels(draft.Control("hand"));
            draft.Twist(twist).Between(elbow, draft.Control("hand")).Sharing(1, 1);
        });
        Near.Equal(Quaterniond.Identity, rig.Evaluate(new Pose().Set(rig.Model.Nodes.Last().Id, Trs.Identity with { Rotation = Quaterniond.About(Vector3d.UnitY, 1) })).WorldOf(rig["twist"]).Rotation);

        var row = Row([.. Enumerable.Repeat(Quaterniond.Identity, 4)], beside: true, twist => twist.Sharing(1, 1));
        Near.Equal(Quaterniond.Identity, row.Evaluate(new Pose().Set(row["hand"].Id, Trs.Identity with { Rotation = new(1, 0, 0, 0) })).WorldOf(row["twist_1"]).Rotation);
    }

    [Fact]
    public void An_end_that_nothing_moves_has_no_roll_and_one_without_ends_turns_nothing()
    {
        static Joint Arm(RigDraft draft) => draft.Skeleton("s").Root("elbow").Child("twist", JointRole.Twist, new(0, 1, 0));
        new TestRig(draft => draft.Twist(Arm(draft)).Sharing(1, 0)).AssertRestHolds();
        new TestRig(draft =>
        {
            var twist = Arm(draft);
            draft.Twist(twist).Between(draft.Control("shoulder"), twist.Child("wrist", at: new Vector3(0, 1, 0)));
        }).AssertRestHolds();
    }

    [Fact]
    public void An_end_below_its_twist_joints_that_is_itself_twisted_is_a_loop()
    {
        var rig = new TestRig(draft =>
        {
            var elbow = draft.Skeleton("s").Root("elbow");
            var twist = elbow.Child("twist", JointRole.Twist, new(0, 1, 0));
            var wrist = twist.Child("wrist", at: new Vector3(0, 1, 0));
            draft.Aim(wrist).At(elbow);
            draft.Twist(twist).Between(elbow, wrist);
        });
        Assert.Contains("'twist' -> 'wrist' -> 'twist'", Assert.Throws<RigGeometryException>(() => rig.Evaluate()).Message, StringComparison.Ordinal);
    }

    private static void AssertTurned(TestRig rig, string joint, string start, double share, (Quaterniond Shoulder, Quaterniond Elbow, double Roll, Vector3d Across, double Swing) turns)
    {
        var pose = Posed(rig, turns);
        var turned = TurnOf(rig, pose, start) * Quaterniond.About(Bone(rig, "elbow", "wrist"), share * turns.Roll);
        Near.Equal(turned, TurnOf(rig, pose, joint), 1e-5);
    }

    private static ReferencePose Posed(TestRig rig, (Quaterniond Shoulder, Quaterniond Elbow, double Roll, Vector3d Across, double Swing) turns)
    {
        var bone = Bone(rig, "elbow", "wrist");
        var across = turns.Across.Across(bone).Direction ?? bone.AnyAcross();
        var wrist = Quaterniond.About(across, turns.Swing) * Quaterniond.About(bone, turns.Roll);
        var pose = new Pose();
        foreach (var (joint, turn) in new[] { ("shoulder", turns.Shoulder), ("elbow", turns.Elbow), ("wrist", wrist) })
            pose.Set(rig["turn_" + joint].Id, rig.Moved("turn_" + joint, Vector3d.Zero, turn));
        return rig.Evaluate(pose);
    }

    /// <summary>How a joint is turned from rest in the world.</summary>
    private static Quaterniond TurnOf(TestRig rig, ReferencePose pose, string joint) => pose.WorldOf(rig[joint]).Rotation * rig.Rest.WorldOf(rig[joint]).Rotation.Inverse;

    private static Vector3d Bone(TestRig rig, string start, string end) => (rig.Rest.WorldOf(rig[end]).Origin - rig.Rest.WorldOf(rig[start]).Origin).Direction!.Value;

    /// <summary>An arm turned by controls, with a twist joint between elbow and wrist.</summary>
    private static TestRig Forearm(ArmSetting setting, Func<Twist, Twist>? sharing = null) => new(draft =>
    {
        var joints = setting.Declare(draft);
        var arm = draft.Chain(joints["shoulder"], joints["wrist"]).Without(JointRole.Twist);
        var copy = arm.Copy("fk");
        Control? above = null;
        foreach (var joint in arm)
        {
            var control = draft.Control($"turn_{joint.Name}").PlacedAt(joint);
            above = above is { } known ? control.Under(known) : control;
            draft.Drive(copy.Of(joint)).ByChannels(control);
        }

        draft.Blend(arm).From(copy, 1f);
        var twist = draft.Twist(joints["elbow_twist"]).Between(joints["elbow"], arm.Tip);
        sharing?.Invoke(twist);
    });

    /// <summary>Two twist joints at a quarter and three quarters of a bone, in a row or beside each other, and a driven wrist.</summary>
    private static TestRig Row(Quaterniond[] frames, bool beside, Func<Twist, Twist> sharing) => new(draft =>
    {
        var elbow = draft.Skeleton("s").Root("elbow", turned: frames[0].ToSingle());
        var (first, second, wrist) = beside
            ? (Below(elbow, "twist_1", frames[1], 1), Below(elbow, "twist_2", frames[2], 3), Below(elbow, "wrist", frames[3], 4))
            : InRow(elbow, frames);
        draft.Drive(wrist).ByChannels(draft.Control("hand").PlacedAt(wrist)).Writing(Channels.Turn);
        sharing(draft.Twist(new JointSet(first, second)).Between(elbow, wrist));
    });

    private static (Joint First, Joint Second, Joint Wrist) InRow(Joint elbow, Quaterniond[] frames)
    {
        var first = Below(elbow, "twist_1", frames[1], 1);
        var along = frames[1].Inverse.Rotate(Vector3d.UnitY);
        var second = first.Child("twist_2", JointRole.Twist, (along * 2).ToSingle(), frames[2].ToSingle());
        return (first, second, second.Child("wrist", at: frames[2].Inverse.Rotate(along).ToSingle(), turned: frames[3].ToSingle()));
    }

    private static Joint Below(Joint parent, string name, Quaterniond frame, float along) =>
        parent.Child(name, name == "wrist" ? JointRole.Deform : JointRole.Twist, new(0, along, 0), frame.ToSingle());

    private static TestRig UpperArm(Quaterniond[] frames) => new(draft =>
    {
        var chest = draft.Skeleton("s").Root("chest", at: new Vector3(1, 2, 3), turned: frames[0].ToSingle());
        var shoulder = chest.Child("shoulder", at: new Vector3(0.2f, 0.1f, 0), turned: frames[1].ToSingle());
        var first = shoulder.Child("twist_1", JointRole.Twist, turned: frames[2].ToSingle());
        var second = first.Child("twist_2", JointRole.Twist, frames[2].Inverse.Rotate(new(0, 0.1, 0)).ToSingle());
        shoulder.Child("elbow", at: new Vector3(0, 0.3f, 0), turned: frames[3].ToSingle());
        draft.Drive(shoulder).ByChannels(draft.Control("turn").PlacedAt(shoulder));
        draft.Twist(new JointSet(first, second)).Between(chest, shoulder);
    });
}
