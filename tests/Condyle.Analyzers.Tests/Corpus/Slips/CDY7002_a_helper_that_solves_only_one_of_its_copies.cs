namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        foreach (var side in Side.Both)
            Reach(rig, rig.Chain(joints.Hip[side], joints.Ankle[side]), side);
    }

    private static void Reach(RigDraft rig, Chain limb, Side side)
    {
        var foot = rig.Control($"foot_{side}").PlacedAt(limb.Tip);
        var stretches = foot.Switch("stretch");
        var (ik, long_) = (limb.Copy("ik"), Stretched(limb));
        rig.TwoBone(ik).Reach(foot);
        rig.Blend(limb).From(ik, stretches.Inverse).From(long_, stretches);
    }

    private static Copy Stretched(Chain limb) => limb.Copy("ik_long"); // finds CDY7002
}
