namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var hips = rig.Control("hips").PlacedAt(joints.Pelvis);
        rig.Drive(joints.Pelvis).ByChannels(hips);
        var arm = rig.Chain(joints.Shoulder[Side.Left], joints.Wrist[Side.Left]);
        var ik = arm.Copy("ik").Under(hips);
        var hand = rig.Control("hand_left").PlacedAt(joints.Ankle[Side.Left]);
        rig.TwoBone(ik).Reach(hand).Stretching(1, most: 1.2f); // finds CDY8003
        rig.Blend(arm).From(ik, 1);
    }
}
