namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var root = rig.Control("root").PlacedAt(joints.Pelvis);
        rig.Drive(joints.Pelvis).ByChannels(root);
        foreach (var side in Side.Both)
        {
            var joint = joints.Wrist[side];
            rig.Drive(joint).ByChannels(rig.Control($"turn_{joint}_{side}").Under(root).PlacedAt(joint)); // finds CDY1009
        }
    }
}
