namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var hips = rig.Control("hips").PlacedAt(joints.Pelvis);
        rig.Drive(joints.Pelvis).ByChannels(hips);
        foreach (var side in Side.Both)
        {
            var arm = rig.Chain(joints.Shoulder[side], joints.Wrist[side]);
            var ik = arm.Copy("ik").Under(hips);
            var elbow = rig.Control($"elbow_pole_{side}").PlacedAt(joints.Head);
            rig.TwoBone(ik).Reach(rig.Control($"hand_{side}").PlacedAt(arm.Tip)).Face(elbow); // finds CDY8001
            rig.Blend(arm).From(ik, 1);
        }
    }
}
