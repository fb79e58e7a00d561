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
            var parts = rig.Group($"arm_{side}_group").PlacedAt(root);
            rig.Drive(parts).ByMatrix(root);
            var arm = rig.Chain(joints.Shoulder[side], joints.Wrist[side]);
            var ik = arm.Copy("ik").Under(parts);
            var fk = arm.Copy("fk").Under(root); // finds CDY4002
            var hand = rig.Control($"hand_{side}").Under(root).PlacedAt(arm.Tip);
            rig.TwoBone(ik).Reach(hand).Face(rig.Control($"elbow_pole_{side}").Under(root).PlacedAt(ik.PolePoint(0.4f)));
            Node above = root;
            foreach (var joint in arm)
            {
                var control = rig.Control($"turn_{joint}").Under(above).PlacedAt(joint);
                rig.Drive(fk.Of(joint)).ByChannels(control);
                above = control;
            }

            var amount = hand.Switch("fk");
            rig.Blend(arm).From(ik, amount.Inverse).From(fk, amount);
        }
    }
}
