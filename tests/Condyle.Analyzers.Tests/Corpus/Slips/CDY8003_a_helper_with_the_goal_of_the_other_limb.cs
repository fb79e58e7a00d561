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
            var foot = rig.Control($"foot_{side}").PlacedAt(joints.Ankle[side]);
            Reach(rig, rig.Chain(joints.Shoulder[side], joints.Wrist[side]), foot, hips);
            Reach(rig, rig.Chain(joints.Hip[side], joints.Ankle[side]), foot, hips);
        }
    }

    private static void Reach(RigDraft rig, Chain limb, Control goal, Control hips)
    {
        var ik = limb.Copy("ik").Under(hips);
        rig.TwoBone(ik).Reach(goal); // finds CDY8003
        rig.Blend(limb).From(ik, 1);
    }
}
