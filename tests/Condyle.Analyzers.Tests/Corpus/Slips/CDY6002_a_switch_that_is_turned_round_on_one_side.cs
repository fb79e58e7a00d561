namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var world = rig.Control("world");
        var hips = rig.Control("hips").Under(world).PlacedAt(joints.Pelvis);
        rig.Drive(joints.Pelvis).ByChannels(hips);
        var chest = Turn(rig, joints.Chest, Turn(rig, joints.Waist, hips));
        foreach (var side in Side.Both)
        {
            var arm = rig.Chain(joints.Shoulder[side], joints.Wrist[side]);
            var collar = Turn(rig, joints.Collar[side], chest);
            var parts = rig.Group($"arm_{side}_group").PlacedAt(collar);
            rig.Drive(parts).ByMatrix(collar);
            var (ik, fk) = (arm.Copy("ik").Under(parts), arm.Copy("fk").Under(parts));
            var hand = rig.Control($"hand_{side}").Under(world).PlacedAt(arm.Tip);
            rig.TwoBone(ik).Reach(hand).Face(rig.Control($"elbow_pole_{side}").Under(world).PlacedAt(ik.PolePoint(0.4f)));
            var above = collar;
            foreach (var joint in arm)
            {
                var control = rig.Control($"turn_{joint}").Under(above).PlacedAt(joint);
                rig.Drive(fk.Of(joint)).ByChannels(control);
                above = control;
            }

            var free = hand.Switch("free");
            var share = side == Side.Left ? free : free.Inverse;
            rig.Blend(arm).From(ik, share.Inverse).From(fk, share); // finds CDY6002
        }
    }

    private static Control Turn(RigDraft rig, Joint joint, Control above)
    {
        var control = rig.Control($"turn_{joint}").Under(above).PlacedAt(joint);
        rig.Drive(joint).ByChannels(control);
        return control;
    }
}
