using Condyle.Evaluation;

namespace Condyle.Tests.Evaluation;

/// <summary>The arm of the design: an IK and an FK copy under a group that follows the arm's root, blended by a switch.</summary>
internal static class ArmRig
{
    public static TestRig Of(ArmSetting setting) => new(rig =>
    {
        var joints = setting.Declare(rig);
        var systems = rig.Group("systems_group");
        var world = rig.Control("world");
        var chest = rig.Control("chest_turn").Under(world).PlacedAt(joints["chest"]);
        rig.Drive(joints["chest"]).ByChannels(chest);

        var arm = rig.Chain(joints["shoulder"], joints["wrist"]).Without(JointRole.Twist);
        var root = rig.Control("arm_root").Under(chest).PlacedAt(arm.Root);
        var parts = rig.Group("arm_group").Under(systems).PlacedAt(root);
        rig.Drive(parts).ByMatrix(root);

        var ik = arm.Copy("ik").Under(parts);
        var hand = rig.Control("hand").Under(world).PlacedAt(arm.Tip);
        var pole = rig.Control("pole").Under(world).PlacedAt(ik.PolePoint(distance: 0.4f));
        rig.TwoBone(ik).Reach(hand).Face(pole);

        var fk = arm.Copy("fk").Under(parts);
        Node above = root;
        foreach (var joint in arm)
        {
            var control = rig.Control($"turn_{joint.Name}").Under(above).PlacedAt(joint);
            rig.Drive(fk.Of(joint)).ByChannels(control);
            above = control;
        }

        var amount = hand.Switch("fk").AlsoOn(root);
        rig.Blend(arm).From(ik, amount.Inverse).From(fk, amount);
        rig.Label("ik_label", "IK").ShownBy(amount.Inverse);
        rig.Label("fk_label", "FK").ShownBy(amount);
    });

    public static IReadOnlyList<string> Chain { get; } = ["shoulder", "elbow", "wrist"];

    /// <summary>A pose in words of the world, so that it means the same for any joint frames.</summary>
    public static Pose Pose(TestRig rig, ArmMotion motion, double fk) => new Pose()
        .Set(rig["hand"].Id, rig.Moved("hand", motion.Hand, motion.HandTurn))
        .Set(rig["pole"].Id, rig.Moved("pole", motion.Pole, Quaterniond.Identity))
        .Set(rig["turn_shoulder"].Id, rig.Moved("turn_shoulder", Vector3d.Zero, motion.Shoulder))
        .Set(rig["turn_elbow"].Id, rig.Moved("turn_elbow", Vector3d.Zero, motion.Elbow))
        .Set(rig["chest_turn"].Id, rig.Moved("chest_turn", motion.Chest, motion.ChestTurn))
        .SetSwitch(rig.SwitchId("fk"), fk);
}
