namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var root = rig.Control("root").PlacedAt(joints.Pelvis);
        rig.Drive(joints.Pelvis).ByChannels(root);
        var left = rig.Control("hand_left").Under(root).PlacedAt(joints.Wrist.Left);
        var right = rig.Control("hand_right").Under(root).PlacedAt(joints.Wrist.Right);
        foreach (var side in Side.Both)
        {
            var arm = rig.Chain(joints.Collar[side], joints.Wrist[side]);
            var ik = arm.Copy("ik").Under(root);
            rig.ManyBone(ik).Reach(side == Side.Left ? right : left); // finds CDY3004
            rig.Blend(arm).From(ik, 1);
        }
    }
}
