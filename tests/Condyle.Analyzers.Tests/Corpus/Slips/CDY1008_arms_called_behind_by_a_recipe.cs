[assembly: RigConventions(TagPlace = "before")]

namespace Harbour;

// Each part of the limbs is called after one text, with the tag of a copy at its end.
public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var systems = rig.Group("systems_group");
        var world = rig.Control("world").PlacedAt(joints.Pelvis);
        rig.Drive(joints.Pelvis).ByChannels(world);
        foreach (var side in Side.Both)
            rig.Limb(rig.Chain(joints.Shoulder[side], joints.Wrist[side]), "arm_fk", side, world, systems, world, new LimbOptions { HasLabels = false }); // finds CDY1008
    }
}
