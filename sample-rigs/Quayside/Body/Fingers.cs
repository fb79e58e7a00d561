using Condyle;

namespace Quayside.Body;

/// <summary>The thumb and the fingers of a hand, posed by their joints. They go with the hand, whichever way the arm is posed.</summary>
internal static class Fingers
{
    public static void Build(RigDraft rig, StevedoreSkeleton joints, Side side, Group systems)
    {
        var hand = rig.Group($"fingers_{side}_group").Under(systems).PlacedAt(joints.Wrist[side]);
        rig.Drive(hand).ByMatrix(joints.Wrist[side]);

        JointSet[] fingers = [joints.ThumbJoints[side], joints.IndexJoints[side], joints.MiddleJoints[side], joints.RingJoints[side], joints.LittleJoints[side]];
        foreach (var finger in fingers)
        {
            Node above = hand;
            for (var i = 0; i < finger.Count; i++)
            {
                var control = rig.Control($"turn_{finger[i].Name}").Under(above).PlacedAt(finger[i]).Lock(Channels.Move).OnLayer("fingers");
                if (i == 0)
                    control.LimitTurn(Axis.X, -30, 80).LimitTurn(Axis.Y, -10, 10).LimitTurn(Axis.Z, -20, 20);
                else
                    control.Lock(Channels.TurnY | Channels.TurnZ).LimitTurn(Axis.X, -14, 95);
                rig.Drive(finger[i]).ByChannels(control);
                above = control;
            }
        }
    }
}
