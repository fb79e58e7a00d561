namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        foreach (var side in Side.Both)
        {
            var leg = rig.Chain(joints.Hip[side], joints.Ankle[side]);
            var ik = leg.Copy("ik");
            var holder = rig.Group($"foot_{side}_group").Under(leg.Tip);
            rig.TwoBone(ik).Reach(Foot(rig, side, holder, leg));
            rig.Blend(leg).From(ik, 1);
        }

        static Control Foot(RigDraft rig, Side side, Group under, Chain leg) => rig.Control($"foot_{side}").Under(under).PlacedAt(leg.Tip); // finds CDY7006
    }
}
