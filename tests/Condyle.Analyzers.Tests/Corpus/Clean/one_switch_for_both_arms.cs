namespace Harbour;

/// <summary>The switch hangs on the left hand, and on the right one as well: either side turns both.</summary>
public sealed class Clean : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var root = rig.Control("root").PlacedAt(joints.Pelvis);
        rig.Drive(joints.Pelvis).ByChannels(root);
        Switch? shared = null;
        foreach (var side in Side.Both)
        {
            var held = rig.Control($"held_{side}").Under(root).PlacedAt(joints.Wrist[side]);
            var loose = rig.Control($"loose_{side}").Under(root).PlacedAt(joints.Wrist[side]);
            var amount = shared?.AlsoOn(held) ?? held.Switch("loose");
            shared = amount;
            rig.Blend((Node)joints.Wrist[side]).From(held, amount.Inverse).From(loose, amount);
        }
    }
}
