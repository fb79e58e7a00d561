namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var (held, loose) = (rig.Control("held_head").PlacedAt(joints.Head), rig.Control("loose_head").PlacedAt(joints.Head));
        var amount = held.Switch("loose", -0.5f); // finds CDY2008
        rig.Blend((Node)joints.Head).From(held, amount.Inverse).From(loose, amount);
    }
}
