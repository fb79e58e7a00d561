namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        rig.Drive(joints.Pelvis).ByChannels(rig.Control("hips").PlacedAt(joints.Pelvis));
        foreach (var side in Side.Both)
        {
            var hand = rig.Control($"turn_hand_{side}").PlacedAt(joints.Wrist[side.Opposite]); // finds CDY1003
            rig.Drive(joints.Wrist[side]).ByChannels(hand);
        }
    }
}
