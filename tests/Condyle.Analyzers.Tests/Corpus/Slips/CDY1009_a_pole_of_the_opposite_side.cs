namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var root = rig.Control("root").PlacedAt(joints.Pelvis);
        rig.Drive(joints.Pelvis).ByChannels(root);
        var systems = rig.Group("systems_group");
        foreach (var side in Side.Both)
        {
            var bones = rig.Chain(joints.Hip[side], joints.Ankle[side]);
            rig.Limb(bones, "leg", side, root, systems, space: root, new LimbOptions { Goal = "foot", Pole = $"knee_pole_{side.Opposite}" }); // finds CDY1009
        }
    }
}
