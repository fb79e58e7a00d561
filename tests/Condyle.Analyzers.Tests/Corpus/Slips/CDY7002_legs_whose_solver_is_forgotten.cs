namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        foreach (var side in Side.Both)
        {
            var leg = rig.Chain(joints.Hip[side], joints.Ankle[side]);
            var ik = leg.Copy("ik"); // finds CDY7002
            var foot = rig.Control($"foot_{side}").PlacedAt(leg.Tip);
            var fk = leg.Copy("fk");
            var above = rig.Control($"leg_{side}").PlacedAt(leg.Root);
            foreach (var joint in leg)
                rig.Drive(fk.Of(joint)).ByChannels(above = rig.Control($"turn_{joint}").Under(above).PlacedAt(joint));
            var amount = foot.Switch("fk");
            rig.Blend(leg).From(ik, amount.Inverse).From(fk, amount);
        }
    }
}
