namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var (held, loose) = (rig.Control("held_head").PlacedAt(joints.Head), rig.Control("loose_head").PlacedAt(joints.Head));
        var used = held.Switch("loose");
        var shown = loose.Switch("loose"); // finds CDY2006
        Blend(rig, joints.Head, held, loose, used);
        return;

        static void Blend(RigDraft rig, Joint joint, Control first, Control second, Switch amount) =>
            rig.Blend((Node)joint).From(first, amount.Inverse).From(second, amount);
    }
}
