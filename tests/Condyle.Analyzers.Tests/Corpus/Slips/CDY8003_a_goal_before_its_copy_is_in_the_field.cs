namespace Harbour;

public sealed class Slip : IRigDefinition
{
    private Copy ik;

    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var root = rig.Control("root").PlacedAt(joints.Pelvis);
        rig.Drive(joints.Pelvis).ByChannels(root);
        foreach (var side in Side.Both)
        {
            var arm = rig.Chain(joints.Shoulder[side], joints.Wrist[side]);
            var hand = rig.Control($"hand_{side}").Under(root);
            this.ik = arm.Copy("ik").Under(root);
            rig.TwoBone(ik).Reach(hand); // finds CDY8003
            rig.Blend(arm).From(ik, 1);
        }
    }
}
