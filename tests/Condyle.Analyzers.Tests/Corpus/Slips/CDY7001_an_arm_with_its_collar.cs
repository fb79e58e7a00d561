namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        foreach (var side in Side.Both)
        {
            var arm = rig.Chain(joints.Collar[side], joints.Wrist[side]);
            var ik = arm.Copy("ik");
            rig.TwoBone(ik).Reach(rig.Control($"hand_{side}").PlacedAt(arm.Tip)); // finds CDY7001
            rig.Blend(arm).From(ik, 1);
        }
    }
}
