namespace Harbour;

public sealed class Clean : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var root = rig.Control("root").PlacedAt(joints.Pelvis);
        rig.Drive(joints.Pelvis).ByChannels(root);
        // The angle of a control is its own channels; where it is carried to doesn't change them.
        var lean = rig.Group("lean_group").Under(root).PlacedAt(joints.Waist).Unlock(Channels.TurnX);
        var bend = rig.Control("bend").Under(lean).PlacedAt(joints.Waist);
        rig.Drive(joints.Waist).ByChannels(bend);
        rig.Response(rig.Angle(bend).About(Axis.X)).Key(-45, -10).Key(45, 10).OntoTurn(lean, Axis.X);
    }
}
