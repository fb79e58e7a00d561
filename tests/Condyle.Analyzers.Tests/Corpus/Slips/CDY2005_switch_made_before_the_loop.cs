namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var root = rig.Control("root");
        var free = rig.Control("held_hand_left").Under(root).PlacedAt(joints.Wrist.Left).Switch("free");
        rig.Control("held_hand_right").Under(root).PlacedAt(joints.Wrist.Right).Switch("free");
        foreach (var side in Side.Both)
        {
            var held = rig.Control($"hold_{side}").Under(root).PlacedAt(joints.Wrist[side]);
            var loose = rig.Control($"loose_{side}").Under(root).PlacedAt(joints.Wrist[side]);
            rig.Blend((Node)joints.Wrist[side])
                .From(held, free.Inverse) // finds CDY2005
                .From(loose, free);
        }
    }
}
