namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var root = rig.Control("root").PlacedAt(joints.Pelvis);
        rig.Drive(joints.Pelvis).ByChannels(root);
        foreach (var joint in new[] { joints.Waist, joints.Chest })
            Hold(rig.Drive(joint).ByChannels(rig.Control($"turn_{joint}").Under(root).PlacedAt(joint)));
        var look = rig.Drive(joints.Head).ByChannels(rig.Control("look").Under(root).PlacedAt(joints.Head));
        Action hold = () => look.KeepingOffset(); // finds CDY3005
        hold();
        foreach (var side in Side.Both)
        {
            var shrug = rig.Drive(joints.Collar[side]).ByChannels(rig.Control($"shrug_{side}").Under(root).PlacedAt(joints.Collar[side]));
            shrug = shrug.KeepingOffset(); // finds CDY3005
            rig.Drive(joints.Toes[side])
                .ByChannels(rig.Control($"toes_tap_{side}").Under(root).PlacedAt(joints.Toes[side]))
                // as it was delivered
                .KeepingOffset(); // finds CDY3005
        }
    }

    private static void Hold(Drive drive) => drive.KeepingOffset(); // finds CDY3005
}
