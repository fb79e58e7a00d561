[assembly: RigConventions(MostJoints = "20")]

namespace Harbour;

public sealed class Clean : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var body = rig.Control("body").PlacedAt(joints.Pelvis);
        rig.Drive(joints.Pelvis).ByChannels(body);

        // A crate that he carries is exported on its own, and copies aren't exported at all.
        var crate = rig.Skeleton("crate").Root("crate", at: new Vector3(0, 1, 0.5f));
        rig.Drive(crate).ByChannels(rig.Control("carry").Under(body).PlacedAt(crate));
        var trunk = rig.Chain(joints.Waist, joints.Chest);
        var fk = trunk.Copy("fk").Under(body);
        foreach (var joint in trunk)
        {
            rig.Drive(fk.Of(joint)).ByChannels(rig.Control($"turn_{joint}").Under(body).PlacedAt(joint));
            rig.Drive(joint).ByChannels(fk.Of(joint));
        }
    }
}
