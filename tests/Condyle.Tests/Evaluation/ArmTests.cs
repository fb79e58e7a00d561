using Condyle.Evaluation;
using CsCheck;

namespace Condyle.Tests.Evaluation;

/// <summary>A whole arm, on random joint frames, away from the origin, under uneven scale, with a bent rest, on both sides.</summary>
public sealed class ArmTests
{
    private static readonly Gen<(ArmSetting Setting, ArmMotion Motion, double Fk)> Case = Gen.Select(ArmSetting.Any, ArmMotion.Any, Gen.Double[0, 1]);

    [Fact]
    public void Rest_holds() => ArmSetting.Any.Sample(setting => ArmRig.Of(setting).AssertRestHolds(1e-7));

    [Fact]
    public void At_either_end_of_the_switch_the_joints_land_on_that_copy() =>
        Case.Sample((setting, motion, _) =>
        {
            var rig = ArmRig.Of(setting);
            foreach (var (tag, fk) in new[] { ("ik", 0.0), ("fk", 1.0) })
            {
                var pose = rig.Evaluate(ArmRig.Pose(rig, motion, fk));
                foreach (var joint in ArmRig.Chain)
                    Near.Equal(pose.WorldOf(rig[$"{tag}_{joint}"]).Frame, pose.WorldOf(rig[joint]).Frame, 1e-6);
            }
        });

    [Fact]
    public void Bones_keep_their_length_anywhere_on_the_switch() =>
        Case.Sample((setting, motion, fk) =>
        {
            var rig = ArmRig.Of(setting);
            var pose = rig.Evaluate(ArmRig.Pose(rig, motion, fk));

            Near.Equal(ArmSetting.UpperArm, (pose.WorldOf(rig["elbow"]).Origin - pose.WorldOf(rig["shoulder"]).Origin).Length, 1e-6);
            Near.Equal(ArmSetting.Forearm, (pose.WorldOf(rig["wrist"]).Origin - pose.WorldOf(rig["elbow"]).Origin).Length, 1e-6);
        });

    [Fact]
    public void The_solved_arm_reaches_its_goal_in_the_plane_of_its_pole_and_its_tip_turns_with_the_goal() =>
        Case.Sample((setting, motion, _) =>
        {
            var rig = ArmRig.Of(setting);
            var pose = rig.Evaluate(ArmRig.Pose(rig, motion, fk: 0));
            Vector3d At(string node) => pose.WorldOf(rig[node]).Origin;

            var (shoulder, elbow, goal) = (At("shoulder"), At("elbow"), At("hand"));
            var line = (goal - shoulder).Direction!.Value;
            var reach = Math.Clamp((goal - shoulder).Length, ArmSetting.UpperArm - ArmSetting.Forearm, ArmSetting.UpperArm + ArmSetting.Forearm);
            Near.Equal(shoulder + (line * reach), At("wrist"), 1e-6);

            var (bend, faced) = ((elbow - shoulder).Across(line), (At("pole") - shoulder).Across(line));
            if (bend.Length > 1e-3 && faced.Length > 1e-3)
                Near.Equal(1, Vector3d.Dot(bend.Direction!.Value, faced.Direction!.Value), 1e-5);
            Near.Equal(motion.HandTurn * rig.Rest.WorldOf(rig["wrist"]).Rotation, pose.WorldOf(rig["wrist"]).Rotation, 1e-6);
        });

    [Fact]
    public void The_bones_turn_rigidly_with_the_solved_triangle() =>
        Case.Sample((setting, motion, _) =>
        {
            var rig = ArmRig.Of(setting);
            var pose = rig.Evaluate(ArmRig.Pose(rig, motion, fk: 0));
            foreach (var (joint, next) in new[] { ("ik_shoulder", "ik_elbow"), ("ik_elbow", "ik_wrist") })
            {
                Vector3d Bone(Func<string, Affine3d> world) => world(joint).Rotation.Inverse.Rotate(world(next).Origin - world(joint).Origin);
                Near.Equal(Bone(node => rig.Rest.WorldOf(rig[node])), Bone(node => pose.WorldOf(rig[node])), 1e-6);
            }
        });

    [Fact]
    public void Twist_joints_between_do_not_matter() =>
        Case.Sample((setting, motion, fk) =>
        {
            // Without the twist joint the wrist's frame is the same in the world, so its own frame takes the twist's in.
            var frames = (Quaterniond[])setting.Frames.Clone();
            frames[5] = frames[4] * frames[5];
            var even = setting with { Scale = Vector3d.One };
            var (with, without) = (ArmRig.Of(even), ArmRig.Of(even with { HasTwist = false, Frames = frames }));
            var (a, b) = (with.Evaluate(ArmRig.Pose(with, motion, fk)), without.Evaluate(ArmRig.Pose(without, motion, fk)));
            foreach (var joint in ArmRig.Chain)
                Near.Equal(a.WorldOf(with[joint]).Frame, b.WorldOf(without[joint]).Frame, 1e-5);
        });

    [Fact]
    public void Moving_the_whole_character_moves_every_joint_with_it() =>
        Gen.Select(Case, Any.Channels).Sample((given, moved) =>
        {
            var ((setting, motion, fk), to) = (given, moved with { Scale = Vector3d.One });
            var rig = ArmRig.Of(setting);
            var (here, there) = (rig.Evaluate(ArmRig.Pose(rig, motion, fk)), rig.Evaluate(ArmRig.Pose(rig, motion, fk).Set(rig["world"].Id, to)));
            foreach (var joint in ArmRig.Chain)
                Near.Equal(to.ToAffine() * here.WorldOf(rig[joint]).Frame, there.WorldOf(rig[joint]).Frame, 1e-5);
        });

    [Fact]
    public void An_evenly_scaled_character_has_its_joints_at_the_scaled_places() =>
        Gen.Select(Case, Gen.Double[0.2, 4]).Sample((given, scale) =>
        {
            var (setting, motion, fk) = given;
            var rig = ArmRig.Of(setting);
            var grown = new Trs(Vector3d.Zero, Quaterniond.Identity, Vector3d.One * scale);
            var (here, there) = (rig.Evaluate(ArmRig.Pose(rig, motion, fk)), rig.Evaluate(ArmRig.Pose(rig, motion, fk).Set(rig["world"].Id, grown)));
            foreach (var joint in ArmRig.Chain)
                Near.Equal(here.WorldOf(rig[joint]).Origin * scale, there.WorldOf(rig[joint]).Origin, 1e-5);
        });

    [Fact]
    public void A_mirrored_arm_in_a_mirrored_pose_stands_mirrored_whatever_its_frames_are() =>
        Gen.Select(Case, Any.Rotation.Array[6]).Sample((given, frames) =>
        {
            var (setting, motion, fk) = given;
            var left = setting with { Side = Side.Left, Origin = setting.Origin with { X = 0 }, Facing = Quaterniond.Identity, Scale = Vector3d.One };
            var (one, other) = (ArmRig.Of(left), ArmRig.Of(left with { Side = Side.Right, Frames = frames }));
            var (a, b) = (one.Evaluate(ArmRig.Pose(one, motion, fk)), other.Evaluate(ArmRig.Pose(other, Mirror(motion), fk)));
            foreach (var joint in ArmRig.Chain)
                Near.Equal(Mirror(a.WorldOf(one[joint]).Origin), b.WorldOf(other[joint]).Origin, 1e-5);
        });

    [Fact]
    public void The_group_follows_by_its_matrix_and_keeps_its_channels() =>
        Case.Sample((setting, motion, _) =>
        {
            var rig = ArmRig.Of(setting);
            var pose = rig.Evaluate(ArmRig.Pose(rig, motion, 0));

            Near.Equal(pose.WorldOf(rig["arm_root"]), pose.WorldOf(rig["arm_group"]), 1e-9);
            Near.Equal(pose.WorldOf(rig["arm_root"]).Origin, pose.WorldOf(rig["ik_shoulder"]).Origin, 1e-7);
        });

    [Theory]
    [InlineData(0.0, true, false)]
    [InlineData(0.5, false, false)]
    [InlineData(0.75, false, true)]
    public void A_label_shows_while_its_weight_is_above_one_half(double fk, bool ik, bool second)
    {
        var rig = ArmRig.Of(ArmSetting.Tidy);
        var pose = rig.Evaluate(new Pose().SetSwitch(rig.SwitchId("fk"), fk));

        Assert.Equal(ik, pose.IsVisible(rig.Model.Labels[0]));
        Assert.Equal(second, pose.IsVisible(rig.Model.Labels[1]));
    }

    [Fact]
    public void Shear_that_the_channels_cannot_hold_is_told()
    {
        var rig = ArmRig.Of(ArmSetting.Tidy with { Scale = new(1, 2, 1) });
        var turned = new Pose().Set(rig["turn_shoulder"].Id, rig.Moved("turn_shoulder", Vector3d.Zero, Quaterniond.About(Vector3d.UnitZ, 0.5))).SetSwitch(rig.SwitchId("fk"), 1);

        Assert.Equal(0, rig.Evaluate().ShearLostBy(rig["shoulder"]));
        Assert.InRange(rig.Evaluate(turned).ShearLostBy(rig["shoulder"]), 0.1, 1);
    }

    private static Vector3d Mirror(Vector3d v) => v with { X = -v.X };

    private static Quaterniond Mirror(Quaterniond q) => new(q.X, -q.Y, -q.Z, q.W);

    private static ArmMotion Mirror(ArmMotion motion) => new(
        Mirror(motion.Hand), Mirror(motion.HandTurn), Mirror(motion.Pole), Mirror(motion.Shoulder), Mirror(motion.Elbow), Mirror(motion.Chest), Mirror(motion.ChestTurn));
}
