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
            var leg = rig.Chain(joints.Hip[side], joints.Ankle[side]);
            var parts = rig.Group($"leg_{side}_group").Under(root);
            var (ik, fk) = (leg.Copy("ik").Under(parts), leg.Copy("fk").Under(parts));
            var foot = rig.Control($"foot_{side}").Under(root).PlacedAt(leg.Tip);
            rig.TwoBone(ik).Reach(foot);
            Node above = root;
            foreach (var joint in leg)
            {
                var turn = rig.Control($"turn_{joint}").Under(above).PlacedAt(joint);
                rig.Drive(fk.Of(joint)).ByChannels(turn);
                above = turn;
            }

            var amount = foot.Switch("fk");
            rig.Blend(leg).From(ik, amount.Inverse).From(fk, amount);
            Tell(rig, side, amount);
        }

        static void Tell(RigDraft rig, Side side, Switch amount) => rig.Label($"leg_label_{side}", "ik").ShownBy(amount); // finds CDY2007
    }
}
