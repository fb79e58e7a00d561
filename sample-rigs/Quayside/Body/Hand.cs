using Condyle;

namespace Quayside.Body;

/// <summary>The thumb and the fingers of a hand: they curl and spread by dials, and turn at their joints. They go with the hand, whichever way the arm is posed.</summary>
internal static class Hand
{
    private static readonly FingersOptions Options = new() { CurlDegrees = 75, ThumbDegrees = 35, SpreadDegrees = 10 };

    public static void Build(RigDraft rig, StevedoreSkeleton joints, Side side, Group systems, Control hand)
    {
        JointSet[] digits = [joints.ThumbJoints[side], joints.IndexJoints[side], joints.MiddleJoints[side], joints.RingJoints[side], joints.LittleJoints[side]];
        var fingers = rig.Fingers(joints.Wrist[side], digits, "fingers", side, hand, systems, Options);
        foreach (var turns in fingers.Turns)
        {
            turns[0].LimitTurn(Axis.X, -30, 80).LimitTurn(Axis.Y, -10, 10).LimitTurn(Axis.Z, -20, 20);
            foreach (var turn in turns.Skip(1))
                turn.Lock(Channels.TurnY | Channels.TurnZ).LimitTurn(Axis.X, -14, 95);
            foreach (var turn in turns)
                turn.Shaped(ControlShape.Ring, size: 0.03f).Tinted(Tint.Sand);
        }
    }
}
