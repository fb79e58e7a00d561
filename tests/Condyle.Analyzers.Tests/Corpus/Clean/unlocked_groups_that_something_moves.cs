namespace Harbour;

public sealed class Clean : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var hips = rig.Control("hips").PlacedAt(joints.Pelvis);
        rig.Drive(joints.Pelvis).ByChannels(hips);
        var sway = rig.Group("sway_group").Under(hips).Unlock(Channels.TurnZ);
        rig.Response(hips.Dial("sway", -10, 10)).Key(-10, -10).Key(10, 10).OntoTurn(sway, Axis.Z);
        var shadow = rig.Group("shadow_group").Unlock(Channels.Move | Channels.Turn);
        rig.Drive(shadow).ByChannels(joints.Head);
        var stick = rig.Control("stick").Under(sway).Unlock(Channels.Scale);
        rig.Drive(rig.Group("tip_group").Under(shadow)).ByMatrix(stick);
    }
}
