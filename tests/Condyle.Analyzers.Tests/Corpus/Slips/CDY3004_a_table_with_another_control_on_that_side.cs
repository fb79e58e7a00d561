namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var root = rig.Control("root").PlacedAt(joints.Pelvis);
        rig.Drive(joints.Pelvis).ByChannels(root);
        var t = new Dictionary<Side, Control> { [Side.Left] = root, [Side.Right] = rig.Control("shrug_collar_right").Under(root).PlacedAt(joints.Collar[Side.Right]) };
        var l = rig.Control("shrug_collar_left").Under(root).PlacedAt(joints.Collar[Side.Left]);
        var side = Side.Left;
        rig.Drive(joints.Collar[side]).ByChannels(t[side.Opposite]); // finds CDY3004
        rig.Drive(joints.Collar[side.Opposite]).ByChannels(t[side.Opposite]);
    }
}
