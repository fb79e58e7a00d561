namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var root = rig.Control("root").PlacedAt(joints.Pelvis);
        rig.Drive(joints.Pelvis).ByChannels(root);
        var parts = rig.Group("arm_left_group").PlacedAt(joints.Collar.Left);
        rig.Drive(parts).ByMatrix(joints.Collar.Left);
        var arm = rig.Chain(joints.Shoulder.Left, joints.Wrist.Left);
        var low = Copied(arm, "fk", parts);
        var high = Copied(arm, "fk", parts);
        foreach (var joint in arm)
        {
            rig.Drive(low.Of(joint)).ByChannels(rig.Control($"low_{joint}").Under(parts).PlacedAt(joint));
            rig.Drive(high.Of(joint)).ByChannels(rig.Control($"high_{joint}").Under(parts).PlacedAt(joint));
        }

        var amount = root.Switch("high");
        rig.Blend(arm).From(low, amount.Inverse).From(high, amount);
    }

    private static Copy Copied(Chain chain, string tag, Group parts) => chain.Copy(tag).Under(parts); // finds CDY1006
}
