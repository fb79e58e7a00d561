namespace Harbour;

public sealed class Clean : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var root = rig.Control("root").PlacedAt(joints.Pelvis);
        rig.Drive(joints.Pelvis).ByChannels(root);
        // What an animator or a response sets comes on top of the matrix: that is what the matrix leaves the channels for.
        var belt = rig.Control("belt").PlacedAt(joints.Waist);
        rig.Drive(belt).ByMatrix(joints.Waist);
        var tool = rig.Group("tool_group").PlacedAt(joints.Waist).Unlock(Channels.TurnX);
        rig.Drive(tool).ByMatrix(belt);
        rig.Response(belt.Dial("swing", -30, 30, 0, DialUnit.Degrees)).Key(-30, -30).Key(30, 30).OntoTurn(tool, Axis.X);
        rig.Control("hammer").Under(tool);
    }
}
