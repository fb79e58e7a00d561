namespace Condyle.Analyzers.Tests.Reporting;

/// <summary>What every snippet stands on: a dock worker's arm, its copies and a switch between them.</summary>
internal static class Stage
{
    public const string Code =
        """
        global using System;
        global using System.Collections.Generic;
        global using System.Linq;
        global using System.Numerics;
        global using Condyle;

        internal sealed record ArmJoints(Joint Root, Joint Shoulder, Joint Elbow, Joint Wrist);

        internal sealed record Limb(Chain Chain, Copy Ik, Copy Fk, Control Hand, Switch Amount);

        internal static class Stage
        {
            public static ArmJoints Joints(RigDraft rig, Side side)
            {
                var root = rig.Skeleton("docker").Root($"pelvis_{side}", JointRole.Helper, at: new Vector3(0, 1, 0));
                var shoulder = root.Child($"shoulder_{side}", at: new Vector3(0.2f * side.Sign, 0.4f, 0));
                var elbow = shoulder.Child($"elbow_{side}", at: new Vector3(0.3f * side.Sign, 0, -0.02f));
                var wrist = elbow.Child($"wrist_{side}", at: new Vector3(0.25f * side.Sign, 0, 0.02f));
                return new ArmJoints(root, shoulder, elbow, wrist);
            }

            public static Limb Arm(RigDraft rig, Side side, string switchName = "fk")
            {
                var joints = Joints(rig, side);
                var chain = rig.Chain(joints.Shoulder, joints.Wrist);
                var hand = rig.Control($"hand_{side}");
                return new Limb(chain, chain.Copy("ik"), chain.Copy("fk"), hand, hand.Switch(switchName));
            }
        }
        """;
}
