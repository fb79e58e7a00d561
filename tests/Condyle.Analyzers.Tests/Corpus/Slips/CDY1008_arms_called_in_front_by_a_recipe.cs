[assembly: RigConventions(TagPlace = "after")]

namespace Harbour;

// The text is in the middle of some names: with the tag at its end they would be right no more than they are.
public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var systems = rig.Group("systems_group");
        var world = rig.Control("world").PlacedAt(joints.Pelvis);
        rig.Drive(joints.Pelvis).ByChannels(world);
        foreach (var side in Side.Both)
            rig.Limb(rig.Chain(joints.Shoulder[side], joints.Wrist[side]), "fk_arm", side, world, systems, world, new LimbOptions { HasLabels = false }); // finds CDY1008
    }
}
