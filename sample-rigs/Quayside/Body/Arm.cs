using Condyle;

namespace Quayside.Body;

/// <summary>Collar, arm and hand of a side.</summary>
internal static class Arm
{
    private static readonly LimbNames Names = new("arm", Goal: "hand", Pole: "elbow_pole");

    public static void Build(RigDraft rig, StevedoreSkeleton joints, Side side, Group systems, Control space, Control chest)
    {
        var collar = rig.Control($"turn_collar_{side}").Under(chest).PlacedAt(joints.Collar[side]).Lock(Channels.Move | Channels.TurnY)
            .LimitTurn(Axis.X, -20, 30).LimitTurn(side, Axis.Z, -10, 35);
        rig.Drive(joints.Collar[side]).ByChannels(collar);

        var bones = rig.Chain(joints.Shoulder[side], joints.Wrist[side]).Without(JointRole.Twist);
        var turns = Limb.Build(rig, bones, Names, side, systems, space, collar).Turns;
        turns[0].LimitTurn(Axis.X, -60, 130).LimitTurn(side, Axis.Y, -90, 90).LimitTurn(side, Axis.Z, -45, 130);
        turns[1].Lock(Channels.TurnY | Channels.TurnZ).LimitTurn(Axis.X, -18, 130);
        turns[2].LimitTurn(Axis.X, -25, 20).LimitTurn(side, Axis.Y, -85, 85).LimitTurn(side, Axis.Z, -75, 75);

        rig.Twist(joints.ElbowTwists[side]).Between(joints.Elbow[side], bones.Tip);
        Fingers.Build(rig, joints, side, systems);
    }
}
