namespace Harbour;

public sealed class Clean : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var root = rig.Control("root").PlacedAt(joints.Pelvis);
        rig.Drive(joints.Pelvis).ByChannels(root);
        foreach (var side in Side.Both)
        {
            var toes = rig.Control($"turn_toes_{side}").Under(root).PlacedAt(joints.Toes[side]);
            var wire = rig.Group($"wire_{side}_group").Under(root).PlacedAt(joints.Toes[side]);
            rig.Control($"bead_{side}").Under(wire);
            rig.Drive(joints.Toes[side]).ByChannels(toes);
        }

        // Each bead's wire points at the other foot, and braces cross between the shoulders and the hips.
        rig.Aim(Wire("left")).At(joints.Toes.Right);
        rig.Aim(Wire("right")).At(joints.Toes.Left);
        rig.Aim(Brace("left")).At(joints.Hip.Right);
        rig.Aim(Brace("right")).At(joints.Hip.Left);

        Group Wire(string side) => rig.Group($"strap_{side}_group").Under(root).PlacedAt(side == "left" ? joints.Toes.Left : joints.Toes.Right).Unlock(Channels.Turn);
        Group Brace(string side) => rig.Group($"brace_{side}_group").Under(root).PlacedAt(side == "left" ? joints.Shoulder.Left : joints.Shoulder.Right).Unlock(Channels.Turn);
    }
}
