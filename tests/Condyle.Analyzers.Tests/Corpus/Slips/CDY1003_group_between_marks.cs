namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        rig.Drive(Holder(rig, "arm_left", joints.Collar.Left)).ByMatrix(joints.Collar.Left);
        rig.Drive(Holder(rig, "arm_right", joints.Collar.Left)).ByMatrix(joints.Collar.Right);
    }

    private static Group Holder(RigDraft rig, string limb, Joint at) => rig.Group(limb + "_group").PlacedAt(at); // finds CDY1003
}
