// Read only: where the chain begins depends on the environment.
namespace Harbour;

public sealed class Clean : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        rig.Drive(joints.Pelvis).ByChannels(rig.Control("hips").PlacedAt(joints.Pelvis));
        var arm = rig.Chain(Environment.MachineName.Length > 3 ? joints.Collar[Side.Left] : joints.Shoulder[Side.Left], joints.Wrist[Side.Left]);
        var ik = arm.Copy("ik");
        rig.TwoBone(ik).Reach(rig.Control("hand").PlacedAt(arm.Tip));
        rig.Blend(arm).From(ik, 1);
    }
}
