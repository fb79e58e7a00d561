namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var (head, hips) = (rig.Control("look").PlacedAt(joints.Chest), rig.Control("hips").PlacedAt(joints.Chest));
        var breathing = rig.Control("breathe").PlacedAt(joints.Chest);
        rig.Blend((Node)joints.Chest).From(head, 0.25f).From(hips, 0.5f); // finds CDY2001
    }
}
