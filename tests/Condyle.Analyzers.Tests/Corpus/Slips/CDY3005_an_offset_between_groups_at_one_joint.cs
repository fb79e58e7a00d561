namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var root = rig.Control("root").PlacedAt(joints.Pelvis);
        rig.Drive(joints.Pelvis).ByChannels(root);
        foreach (var side in Side.Both)
        {
            var shift = 0.01f * Environment.ProcessorCount;
            var start = rig.Control($"arm_root_{side}").Under(root).PlacedAt(joints.Shoulder[side]).LimitMove(Axis.X, -shift, shift);
            var parts = rig.Group($"arm_{side}_group").PlacedAt(start);
            rig.Drive(parts).ByMatrix(start).KeepingOffset(); // finds CDY3005
            rig.Drive(joints.Shoulder[side]).ByChannels(rig.Control($"arm_{side}").Under(parts).PlacedAt(joints.Shoulder[side]));
        }
    }
}
