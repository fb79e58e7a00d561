namespace Harbour;

public sealed class Clean : IRigDefinition
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

            // He begins with the right arm in FK, and it turns further.
            var (isLeft, most) = (side == Side.Left, side == Side.Left ? 35 : 50);
            var amount = hand.Switch("fk", isLeft ? 0 : 1);
            rig.Blend(arm).From(ik, amount.Inverse).From(fk, amount);
            collar.LimitTurn(Axis.X, -20, 30).LimitTurn(Axis.Y, -25, 25).LimitTurn(Axis.Z, isLeft ? -10 : -most, isLeft ? most : 10);
        }
    }

    private static Control Turn(RigDraft rig, Joint joint, Control above)
    {
        var control = rig.Control($"turn_{joint}").Under(above).PlacedAt(joint);
        rig.Drive(joint).ByChannels(control);
        return control;
    }
}
