namespace Harbour;

public sealed class Clean : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var hips = rig.Control("hips").PlacedAt(joints.Pelvis);
        rig.Drive(joints.Pelvis).ByChannels(hips);
        var crate = joints.Pelvis.Child("crate", JointRole.Helper, at: new Vector3(0, 0, 0.4f));
        var held = hips.Choice("held", ["ground", "left", "right"]);
        var ground = rig.Control("crate_ground").PlacedAt(crate);
        rig.Blend(crate).From(ground, held.Is("ground")).From(joints.Wrist[Side.Left], held.Is("left")).From(joints.Wrist[Side.Right], held.Is("right"));
        var lid = crate.Child("lid", JointRole.Helper, at: new Vector3(0, 0.3f, 0));
        rig.Drive(lid).ByChannels(rig.Control("open_lid").Under(ground).PlacedAt(lid));
    }
}
