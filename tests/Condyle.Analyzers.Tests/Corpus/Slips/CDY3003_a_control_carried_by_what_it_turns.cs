namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var root = rig.Control("root").PlacedAt(joints.Pelvis);
        rig.Drive(joints.Pelvis).ByChannels(root);
        foreach (var side in Side.Both)
            Turn(rig, joints.Collar[side], Holder(rig, joints.Shoulder[side], side), side);
    }

    private static Group Holder(RigDraft rig, Joint joint, Side side)
    {
        var group = rig.Group($"collar_{side}_group").PlacedAt(joint);
        rig.Drive(group).ByMatrix(joint);
        return group;
    }

    private static void Turn(RigDraft rig, Joint joint, Node above, Side side)
    {
        var control = rig.Control($"shrug_{side}").Under(above).PlacedAt(joint);
        rig.Drive(joint).ByChannels(control); // finds CDY3003
    }
}
