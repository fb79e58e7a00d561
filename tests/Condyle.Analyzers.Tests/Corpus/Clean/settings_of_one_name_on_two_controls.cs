namespace Harbour;

public sealed class Clean : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var head = rig.Control("turn_head").PlacedAt(joints.Head);
        rig.Drive(joints.Head).ByChannels(head);
        var chest = rig.Control("turn_chest").PlacedAt(joints.Chest);
        rig.Drive(joints.Chest).ByChannels(chest);
        rig.Response(head.Dial("Puff_2", 0, 1)).Key(0, 0).Key(1, 1).OntoMorph("face", "puff");
        rig.Response(chest.Dial("puff_2", 0, 1)).Key(0, 0).Key(1, 1).OntoMorph("body", "puff");
    }
}
