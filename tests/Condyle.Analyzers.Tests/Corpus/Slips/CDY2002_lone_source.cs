namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        rig.Blend((Node)joints.Head).From(rig.Control("look").PlacedAt(joints.Head), 1f); // finds CDY2002
    }
}
