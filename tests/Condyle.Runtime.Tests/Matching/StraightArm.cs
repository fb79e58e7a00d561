using System.Numerics;

namespace Condyle.Runtime.Tests.Matching;

/// <summary>An arm that rests straight along X and bends about Y; it stretches, its hand has limits, and its elbow's moves are locked but along the arm.</summary>
internal sealed class StraightArm : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var shoulder = rig.Skeleton("arm").Root("shoulder", at: new Vector3(0.2f, 1.4f, 0));
        var elbow = shoulder.Child("elbow", at: new Vector3(0.3f, 0, 0));
        var wrist = elbow.Child("wrist", at: new Vector3(0.25f, 0, 0));
        var arm = rig.Chain(shoulder, wrist).Bending(-Vector3.UnitZ);
        var parts = rig.Group("arm_group").PlacedAt(shoulder);
        rig.Drive(parts).ByMatrix(rig.Control("root").PlacedAt(shoulder));

        var ik = arm.Copy("ik").Under(parts);
        var hand = rig.Control("hand").PlacedAt(wrist).LimitTurn(Axis.X, -30, 30);
        rig.TwoBone(ik).Reach(hand).Face(rig.Control("pole").PlacedAt(arm.PolePoint(0.4f))).Stretching(1f);

        var fk = arm.Copy("fk").Under(parts);
        var turnShoulder = rig.Control("turn_shoulder").PlacedAt(shoulder);
        var turnElbow = rig.Control("turn_elbow").Under(turnShoulder).PlacedAt(elbow).Lock(Channels.MoveX);
        rig.Drive(fk.Of(shoulder)).ByChannels(turnShoulder);
        rig.Drive(fk.Of(elbow)).ByChannels(turnElbow);
        rig.Drive(fk.Of(wrist)).ByChannels(rig.Control("turn_wrist").Under(turnElbow).PlacedAt(wrist));

        var amount = hand.Switch("fk");
        rig.Blend(arm).From(ik, amount.Inverse).From(fk, amount);
    }
}
