using Condyle;

namespace Quayside.Body;

/// <summary>Leg and foot of a side.</summary>
internal static class Leg
{
    private static readonly LimbNames Names = new("leg", Goal: "foot", Pole: "knee_pole");

    public static void Build(RigDraft rig, StevedoreSkeleton joints, Side side, Group systems, Control space, Control hips)
    {
        var bones = rig.Chain(joints.Hip[side], joints.Ankle[side]).Without(JointRole.Twist);
        var turns = Limb.Build(rig, bones, Names, side, systems, space, hips).Turns;
        turns[0].LimitTurn(Axis.X, -120, 25).LimitTurn(side, Axis.Y, -40, 40).LimitTurn(side, Axis.Z, -45, 25);
        turns[1].Lock(Channels.TurnY | Channels.TurnZ).LimitTurn(Axis.X, -12, 140);
        turns[2].LimitTurn(Axis.X, -25, 45).LimitTurn(side, Axis.Y, -20, 20).LimitTurn(side, Axis.Z, -25, 25);

        Toes(rig, joints.Ankle[side], joints.Toes[side], side, systems);
    }

    private static void Toes(RigDraft rig, Joint ankle, Joint toes, Side side, Group systems)
    {
        var foot = rig.Group($"toes_{side}_group").Under(systems).PlacedAt(ankle);
        rig.Drive(foot).ByMatrix(ankle);

        var control = rig.Control($"turn_{toes.Name}").Under(foot).PlacedAt(toes).Lock(Channels.Move | Channels.TurnY | Channels.TurnZ)
            .LimitTurn(Axis.X, -60, 30);
        rig.Drive(toes).ByChannels(control);
    }
}
