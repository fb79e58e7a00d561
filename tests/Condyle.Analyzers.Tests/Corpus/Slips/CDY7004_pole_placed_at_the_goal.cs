namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        rig.Drive(joints.Pelvis).ByChannels(rig.Control("hips").PlacedAt(joints.Pelvis));
        var controls = new Dictionary<string, Control>();
        foreach (var (name, at) in new[] { ("hand", joints.Wrist.Left), ("elbow_pole", joints.Wrist.Left) })
            controls[name] = rig.Control(name).PlacedAt(at);
        var arm = rig.Chain(joints.Shoulder.Left, joints.Wrist.Left);
        var parts = rig.Group("arm_left_group").Under(rig.Control("carry").Under(controls["hand"]));
        rig.Drive(parts).ByMatrix(joints.Chest).KeepingOffset();
        var ik = arm.Copy("ik").Under(parts);
        rig.TwoBone(ik).Reach(controls["hand"]).Face(controls["elbow_pole"]); // finds CDY7004
        rig.Blend(arm).From(ik, 1);
    }
}
