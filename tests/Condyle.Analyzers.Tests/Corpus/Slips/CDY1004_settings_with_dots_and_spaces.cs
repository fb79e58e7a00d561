namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var hand = rig.Control("turn_head").PlacedAt(joints.Head);
        rig.Drive(joints.Head).ByChannels(hand);
        Show(rig, hand, "nod.down", "chin");
        Show(rig, hand, "brow lift", "brow");
        rig.Response(hand.Dial("Blink", 0, 1)).Key(0, 0).Key(1, 1).OntoMorph("face", "blink");
        rig.Response(hand.Dial("blink", 0, 1)).Key(0, 0).Key(1, 1).OntoMorph("face", "wink"); // finds CDY1004
    }

    private static void Show(RigDraft rig, Control on, string name, string shape) =>
        rig.Response(on.Dial(name, 0, 1)).Key(0, 0).Key(1, 1).OntoMorph("face", shape); // finds CDY1004
}
