// Read only: whether the copy is solved depends on the environment.
namespace Harbour;

public sealed class Clean : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        rig.Drive(joints.Pelvis).ByChannels(rig.Control("hips").PlacedAt(joints.Pelvis));
        var leg = rig.Chain(joints.Hip[Side.Left], joints.Ankle[Side.Left]);
        var ik = leg.Copy("ik");
        if (Environment.MachineName.Length > 3)
            rig.TwoBone(ik).Reach(rig.Control("foot").PlacedAt(leg.Tip));
    }
}
