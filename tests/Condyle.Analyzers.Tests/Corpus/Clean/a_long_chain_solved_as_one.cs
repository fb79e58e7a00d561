namespace Harbour;

public sealed class Clean : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        foreach (var side in Side.Both)
        {
            var arm = rig.Chain(joints.Collar[side], joints.Wrist[side]);
            var ik = arm.Copy("ik");
            rig.ManyBone(ik).Reach(rig.Control($"hand_{side}").PlacedAt(arm.Tip));
            rig.Blend(arm).From(ik, 1);
        }
    }
}
