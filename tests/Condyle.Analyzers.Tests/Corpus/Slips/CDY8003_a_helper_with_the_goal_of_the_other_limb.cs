namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        rig.Drive(joints.Pelvis).ByChannels(rig.Control("hips").PlacedAt(joints.Pelvis));
        foreach (var side in Side.Both)
        {
            var foot = rig.Control($"foot_{side}").PlacedAt(joints.Ankle[side]);
            Reach(rig, rig.Chain(joints.Shoulder[side], joints.Wrist[side]), foot);
            Reach(rig, rig.Chain(joints.Hip[side], joints.Ankle[side]), foot);
        }
    }

    private static void Reach(RigDraft rig, Chain limb, Control goal)
    {
        var ik = limb.Copy("ik");
        rig.TwoBone(ik).Reach(goal); // finds CDY8003
        rig.Blend(limb).From(ik, 1);
    }
}
