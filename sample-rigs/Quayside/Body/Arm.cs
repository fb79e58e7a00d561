using Condyle;

namespace Quayside.Body;

/// <summary>Collar, arm and hand of a side.</summary>
internal static class Arm
{
    private static readonly LimbOptions Options = new() { Goal = "hand", Pole = "elbow_pole", Stretches = true, Softness = 0.01f };

    public static void Build(RigDraft rig, StevedoreSkeleton joints, Side side, Group systems, Control space, Torso torso)
    {
        var bones = rig.Chain(joints.Shoulder[side], joints.Wrist[side]).Without(JointRole.Twist);
        var arm = rig.Limb(bones, "arm", side, under: torso.Chest, systems, space, Options);
        arm.Turns[0].LimitTurn(Axis.X, -60, 130).LimitTurn(side, Axis.Y, -80, 80).LimitTurn(side, Axis.Z, -45, 130);
        arm.Turns[1].Lock(Channels.TurnY | Channels.TurnZ).LimitTurn(Axis.X, -18, 130);
        arm.Turns[2].LimitTurn(Axis.X, -25, 20).LimitTurn(side, Axis.Y, -85, 85).LimitTurn(side, Axis.Z, -75, 75);
        arm.Show("arms", Tint.Teal, size: 0.14f);

        var collar = rig.Collar(arm, joints.Collar[side], under: torso.Chest);
        collar.Turn.Lock(Channels.TurnY).LimitTurn(Axis.X, -20, 30).LimitTurn(side, Axis.Z, -10, 35)
            .Shaped(ControlShape.Triangle, size: 0.12f).Tinted(Tint.Teal).OnLayer("arms");

        rig.Spaces(arm, torso.Spaces);
        rig.Twist(joints.ShoulderTwists[side]).Between(joints.Collar[side], joints.Shoulder[side]);
        rig.Twist(joints.ElbowTwists[side]).Between(joints.Elbow[side], bones.Tip);
        Hand.Build(rig, joints, side, systems, arm.Goal);
    }
}
