namespace Harbour;

public sealed class Clean : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var world = rig.Control("world");
        var hips = rig.Control("hips").Under(world).PlacedAt(joints.Pelvis);
        rig.Drive(joints.Pelvis).ByChannels(hips);
        var waist = Turn(rig, joints.Waist, hips);
        var chest = Turn(rig, joints.Chest, waist);
        foreach (var side in Side.Both)
        {
            var leg = rig.Chain(joints.Hip[side], joints.Ankle[side]);
            var parts = rig.Group($"leg_{side}_group").PlacedAt(hips);
            rig.Drive(parts).ByMatrix(hips);
            var ik = leg.Copy("ik").Under(parts);
            var foot = rig.Control($"foot_{side}").PlacedAt(leg.Tip);
            var pole = rig.Control($"knee_pole_{side}").PlacedAt(ik.PolePoint(0.4f));
            rig.TwoBone(ik).Reach(foot).Face(pole);
            foreach (var joint in leg)
                rig.Drive(joint).ByChannels(ik.Of(joint));
            rig.Drive(joints.Toes[side]).ByChannels(rig.Control($"turn_toes_{side}").Under(foot).PlacedAt(joints.Toes[side]));
        }
    }

    private static Control Turn(RigDraft rig, Joint joint, Control above)
    {
        var control = rig.Control($"turn_{joint}").Under(above).PlacedAt(joint);
        rig.Drive(joint).ByChannels(control);
        return control;
    }
}
