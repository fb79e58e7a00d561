namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var root = rig.Control("root").PlacedAt(joints.Pelvis);
        rig.Drive(joints.Pelvis).ByChannels(root);
        var arms = Side.Both.Select(side => Arm(rig, joints, side, root)).ToList();
        for (var i = 0; i < arms.Count; i++)
            rig.Blend(arms[i].Bones).From(arms[1 - i].Fk, 1f); // finds CDY2009
    }

    private static (Chain Bones, Copy Fk) Arm(RigDraft rig, Docker joints, Side side, Control root)
    {
        var bones = rig.Chain(joints.Shoulder[side], joints.Wrist[side]);
        var fk = bones.Copy("fk").Under(rig.Group($"arm_{side}_group").Under(root));
        foreach (var joint in bones)
            rig.Drive(fk.Of(joint)).ByChannels(rig.Control($"turn_{joint}").Under(root).PlacedAt(joint));
        return (bones, fk);
    }
}
