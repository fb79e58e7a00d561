namespace Harbour;

public sealed class Clean : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var root = rig.Control("root").PlacedAt(joints.Pelvis);
        rig.Drive(joints.Pelvis).ByChannels(root);
        // The copy has a collar more than what is blended, and one chain is made anew each time.
        foreach (var side in Side.Both)
        {
            var copy = rig.Chain(joints.Collar[side], joints.Wrist[side]).Copy("fk").Under(rig.Group($"arm_{side}_group").Under(root));
            foreach (var joint in rig.Chain(joints.Collar[side], joints.Wrist[side]))
                rig.Drive(copy.Of(joint)).ByChannels(rig.Control($"turn_{joint}").Under(root).PlacedAt(joint));
            rig.Drive(joints.Collar[side]).ByChannels(copy.Of(joints.Collar[side]));
            rig.Blend(rig.Chain(joints.Shoulder[side], joints.Wrist[side])).From(copy, 1f);
        }
    }
}
