namespace Harbour;

// Two legs, of whose parts each is called after the same text, and a goal that an option of the arms names; the legs change it in their copy of the options.
public sealed class Slip : IRigDefinition
{
    private static readonly LimbOptions Plain = new() { HasLabels = false, Goal = "hand.tool" }; // finds CDY1004

    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var systems = rig.Group("systems_group");
        var world = rig.Control("world").PlacedAt(joints.Pelvis);
        rig.Drive(joints.Pelvis).ByChannels(world);
        foreach (var side in Side.Both)
            rig.Limb(rig.Chain(joints.Hip[side], joints.Ankle[side]), "long leg", side, world, systems, world, Plain with { Goal = "foot", Pole = "knee_pole" }); // finds CDY1004
        foreach (var side in Side.Both)
            rig.Limb(rig.Chain(joints.Shoulder[side], joints.Wrist[side]), "arm", side, world, systems, world, Plain);
    }
}
