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
            var aim = rig.Control($"aim_toes_{side}").Under(root).PlacedAt(rig.Spot(joints.Toes[side], new Vector3(0, 0, 0.2f)));
            rig.Aim(joints.Toes[side]).At(aim).Up(joints.Knee[side.Opposite], Axis.X); // finds CDY3004
        }
    }
}
