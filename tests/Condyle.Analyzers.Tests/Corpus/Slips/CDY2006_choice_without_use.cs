namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        foreach (var side in Side.Both)
        {
            var hand = rig.Control($"hand_{side}").PlacedAt(joints.Wrist[side]);
            hand.Choice("holds", ["crate", "rope", "nothing"]); // finds CDY2006
            rig.Drive(joints.Wrist[side]).ByChannels(hand);
        }
    }
}
