namespace Condyle.Analyzers.Tests.Reading;

/// <summary>The arm of the design, as source: a limb with IK and FK, a switch with its inverse, labels.</summary>
internal static class ArmSample
{
    public const string Body =
        """
        var systems = rig.Group("systems_group");
        var world = rig.Control("world");
        foreach (var side in Side.Both)
            BuildArm(rig, side, systems, world);
        """;

    public const string Members = Joints + BuildArm;

    private const string Joints = """
        private static (Joint Root, Joint Shoulder, Joint Twist, Joint Elbow, Joint Wrist) Joints(RigDraft rig, Side side)
        {
            var skeleton = rig.Skeleton("test");
            var x = side.Sign;
            var root = skeleton.Root($"root_{side}", JointRole.Helper, at: new Vector3(0, 1, 0));
            var shoulder = root.Child($"shoulder_{side}", at: new Vector3(0.2f * x, 0.4f, 0));
            var twist = shoulder.Child($"shoulder_twist_{side}", JointRole.Twist, at: new Vector3(0.1f * x, 0, 0));
            var elbow = twist.Child($"elbow_{side}", at: new Vector3(0.2f * x, 0, -0.02f), turned: Quaternion.CreateFromAxisAngle(Vector3.UnitY, 0.1f));
            var wrist = elbow.Child($"wrist_{side}", at: new Vector3(0.25f * x, 0, 0.02f));
            return (root, shoulder, twist, elbow, wrist);
        }
        """;

    private const string BuildArm =
        """
        private static void BuildArm(RigDraft rig, Side side, Group systems, Control world)
        {
            var joints = Joints(rig, side);
            var arm = rig.Chain(joints.Shoulder, joints.Wrist).Without(JointRole.Twist);
            var root = rig.Control($"arm_root_{side}").Under(world).PlacedAt(arm.Root);
            var parts = rig.Group($"arm_{side}_group").Under(systems).PlacedAt(root);
            rig.Drive(parts).ByMatrix(root);
            var ik = arm.Copy("ik").Under(parts);
            var hand = rig.Control($"hand_{side}").Under(world).PlacedAt(arm.Tip);
            var elbow = rig.Control($"elbow_pole_{side}").Under(world).PlacedAt(ik.PolePoint(distance: 0.4f));
            rig.TwoBone(ik).Reach(hand).Face(elbow);
            var fk = arm.Copy("fk").Under(parts);
            var above = root;
            foreach (var joint in arm)
            {
                var control = rig.Control($"turn_{joint.Name}").Under(above).PlacedAt(joint);
                rig.Drive(fk.Of(joint)).ByChannels(control);
                above = control;
            }
            var fkAmount = hand.Switch("fk").AlsoOn(root);
            rig.Blend(arm).From(ik, fkAmount.Inverse).From(fk, fkAmount);
            rig.Label($"ik_arm_label_{side}", "IK").ShownBy(fkAmount.Inverse);
            rig.Label($"fk_arm_label_{side}", "FK").ShownBy(fkAmount);
        }
        """;
}
