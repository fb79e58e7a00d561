using System.Numerics;
using Condyle;

namespace Quayside.Body;

/// <summary>Leg and foot of a side.</summary>
internal static class Leg
{
    private static readonly LimbOptions Options = new() { Goal = "foot", Pole = "knee_pole", PoleDistance = 0.5f, Stretches = true, Softness = 0.01f, GoalAlongWorld = true };

    /// <summary>Where the heel meets the ground, from the ankle; and where the toes end, from the ball: in metres, by eye.</summary>
    private static readonly Vector3 Heel = new(0, -0.07f, -0.068f), Tip = new(0, -0.028f, 0.075f);

    public static void Build(RigDraft rig, StevedoreSkeleton joints, Side side, Group systems, Control space, Torso torso)
    {
        var bones = rig.Chain(joints.Hip[side], joints.Ankle[side]).Without(JointRole.Twist);
        var leg = rig.Limb(bones, "leg", side, under: torso.Hips, systems, space, Options);
        leg.Turns[0].LimitTurn(Axis.X, -120, 25).LimitTurn(side, Axis.Y, -40, 40).LimitTurn(side, Axis.Z, -45, 25);
        leg.Turns[1].Lock(Channels.TurnY | Channels.TurnZ).LimitTurn(Axis.X, -12, 140);
        leg.Turns[2].LimitTurn(Axis.X, -25, 45).LimitTurn(side, Axis.Y, -20, 20).LimitTurn(side, Axis.Z, -25, 25);
        leg.Show("legs", Tint.Moss, size: 0.2f);

        rig.Twist(joints.HipTwists[side]).Between(joints.Pelvis, joints.Hip[side]);
        var foot = rig.FootRoll(leg, joints.Toes[side], Heel, Tip);
        foot.Toes.Lock(Channels.TurnY | Channels.TurnZ).LimitTurn(Axis.X, -60, 30).Shaped(ControlShape.Triangle, size: 0.1f).Tinted(Tint.Moss).OnLayer("legs");
        var swivel = leg.Goal.Dial("swivel", -60, 60, unit: DialUnit.Degrees);
        rig.Response(swivel).Key(-60, -60).Key(60, 60).OntoTurn(foot.Ball, Axis.Y);
        rig.Spaces(leg, torso.Spaces with { Chest = null, Head = null });
    }
}
