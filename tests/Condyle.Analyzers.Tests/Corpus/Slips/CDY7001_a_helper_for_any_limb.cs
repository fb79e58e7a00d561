namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        foreach (var side in Side.Both)
        {
            Reach(rig, rig.Chain(joints.Shoulder[side], joints.Wrist[side]));
            Reach(rig, rig.Chain(joints.Ankle[side], joints.Toes[side]));
        }
    }

    private static void Reach(RigDraft rig, Chain limb)
    {
        var ik = limb.Copy($"ik_{limb.Root}");
        rig.TwoBone(ik).Reach(rig.Control($"reach_{limb.Tip}").PlacedAt(limb.Tip)); // finds CDY7001
        rig.Blend(limb).From(ik, 1);
    }
}
