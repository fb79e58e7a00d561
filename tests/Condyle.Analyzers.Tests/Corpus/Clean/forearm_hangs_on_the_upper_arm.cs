namespace Harbour;

/// <summary>The elbow follows the shoulder's copy with its offset kept: a stiff arm on purpose.</summary>
public sealed class Clean : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var root = rig.Control("root").PlacedAt(joints.Pelvis);
        rig.Drive(joints.Pelvis).ByChannels(root);
        foreach (var side in Side.Both)
        {
            var arm = rig.Chain(joints.Shoulder[side], joints.Wrist[side]);
            var parts = rig.Group($"arm_{side}_group").PlacedAt(joints.Collar[side]);
            rig.Drive(parts).ByMatrix(joints.Collar[side]);
            var fk = arm.Copy("fk").Under(parts);
            Node above = parts;
            foreach (var joint in arm)
            {
                var turn = rig.Control($"turn_{joint}").Under(above).PlacedAt(joint);
                rig.Drive(fk.Of(joint)).ByChannels(turn);
                above = turn;
            }

            rig.Drive(arm.Root).ByChannels(fk.Root);
            rig.Drive(arm[1]).ByChannels(fk.Root).KeepingOffset();
            rig.Drive(arm.Tip).ByChannels(fk.Tip);
        }
    }
}
