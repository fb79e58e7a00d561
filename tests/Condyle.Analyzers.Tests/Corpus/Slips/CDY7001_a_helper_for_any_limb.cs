namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        rig.Drive(joints.Pelvis).ByChannels(rig.Control("hips").PlacedAt(joints.Pelvis));
        foreach (var side in Side.Both)
        {
            Reach(rig, rig.Chain(joints.Hip[side], joints.Ankle[side]));
            Reach(rig, rig.Chain(joints.Ankle[side], joints.Toes[side]));
        }
    }

    private static void Reach(RigDraft rig, Chain limb)
    {
        var ik = limb.Copy("ik");
        rig.TwoBone(ik).Reach(rig.Control($"reach_{limb.Tip}").PlacedAt(limb.Tip)); // finds CDY7001
        rig.Blend(limb).From(ik, 1);
    }
}
