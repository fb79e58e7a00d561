namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var hips = rig.Control("hips").PlacedAt(joints.Pelvis);
        rig.Drive(joints.Pelvis).ByChannels(hips);
        var crate = joints.Pelvis.Child("crate", JointRole.Helper, at: new Vector3(0, 0, 0.4f));
        var held = hips.Switch("held", 0.5f);
        var ground = rig.Control("crate_ground").PlacedAt(crate);
        rig.Blend(crate).From(ground, held.Inverse).From(rig.Control("crate_hand").PlacedAt(joints.Wrist[Side.Left]), held); // finds CDY8001
    }
}
