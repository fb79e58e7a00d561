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
            var turn = rig.Control($"turn_wrist_{side}").Under(root).PlacedAt(joints.Wrist[side]);
            rig.Drive(joints.Wrist[side]).ByChannels(root); // finds CDY8001
        }
    }
}
