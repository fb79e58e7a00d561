using Condyle;

namespace Quayside.Bird;

/// <summary>A leg that stands: the thigh goes with the body, shank and foot reach for a goal, and the toes curl.</summary>
internal static class Leg
{
    private static readonly LimbOptions Options = new() { Goal = "foot", Pole = "ankle_pole", PoleDistance = 0.12f };
    private static readonly FingersOptions Toes = new() { HasThumb = false, CurlDegrees = 50, SpreadDegrees = -14 };

    public static void Build(RigDraft rig, GullSkeleton joints, Side side, Group systems, Control space, Control body)
    {
        var tint = Sides.TintOf(side);
        var hip = rig.Control($"turn_hip_{side}").Under(body).PlacedAt(joints.Hip[side]).Lock(Channels.Move)
            .LimitTurn(Axis.X, -40, 40).LimitTurn(side, Axis.Y, -20, 20).LimitTurn(side, Axis.Z, -30, 30)
            .Shaped(ControlShape.Ring, size: 0.08f).Tinted(tint).OnLayer("legs");
        rig.Drive(joints.Hip[side]).ByChannels(hip);

        var leg = rig.Limb(rig.Chain(joints.Knee[side], joints.Ball[side]), "leg", side, under: hip, systems, space, Options);
        leg.Root.LimitMove(Axis.X, -0.01f, 0.01f).LimitMove(Axis.Y, -0.01f, 0.01f).LimitMove(Axis.Z, -0.01f, 0.01f)
            .Shaped(ControlShape.Cross, size: 0.05f).Tinted(tint).OnLayer("legs");
        leg.Goal.Shaped(ControlShape.Box, size: 0.05f).Tinted(tint).OnLayer("legs");
        leg.Pole.Shaped(ControlShape.Diamond, size: 0.03f).Tinted(tint).OnLayer("legs");
        leg.Turns[0].LimitTurn(Axis.X, -50, 80).LimitTurn(side, Axis.Y, -20, 20).LimitTurn(side, Axis.Z, -20, 20);
        leg.Turns[1].Lock(Channels.TurnY | Channels.TurnZ).LimitTurn(Axis.X, -50, 90);
        leg.Turns[2].LimitTurn(Axis.X, -80, 60).LimitTurn(side, Axis.Y, -20, 20).LimitTurn(side, Axis.Z, -20, 20);
        foreach (var turn in leg.Turns)
            turn.Shaped(ControlShape.Ring, size: 0.05f).Tinted(tint).OnLayer("legs");

        var toes = rig.Fingers(joints.Ball[side], [joints.ToeInnerJoints[side], joints.ToeMiddleJoints[side], joints.ToeOuterJoints[side]], "toes", side, leg.Goal, systems, Toes);
        foreach (var toe in toes.Turns)
        {
            toe[0].Lock(Channels.TurnY).LimitTurn(Axis.X, -30, 60).LimitTurn(side, Axis.Z, -15, 15);
            toe[1].Lock(Channels.TurnY | Channels.TurnZ).LimitTurn(Axis.X, -20, 80);
            foreach (var turn in toe)
                turn.Shaped(ControlShape.Ring, size: 0.015f).Tinted(tint);
        }
    }
}
