namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var root = rig.Control("root").PlacedAt(joints.Pelvis);
        rig.Drive(joints.Pelvis).ByChannels(root);
        var sway = rig.Control("sway").Under(root).PlacedAt(joints.Waist);
        const float least = -1;
        rig.Falloff(rig.Chain(joints.Waist, joints.Head)).From(sway).Sharing(least, -least); // finds CDY8004
    }
}
