namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        foreach (var side in Side.Both)
        {
            var arm = rig.Chain(joints.Shoulder[side], joints.Wrist[side]);
            var ik = arm.Copy("ik");
            var hand = rig.Control($"hand_{side}").Under(ik.Of(joints.Elbow[side])).PlacedAt(arm.Tip); // finds CDY7006
            rig.TwoBone(ik).Reach(hand);
            rig.Blend(arm).From(ik, 1);
        }
    }
}
