namespace Harbour;

public sealed class Clean : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var root = rig.Control("root").PlacedAt(joints.Pelvis);
        rig.Drive(joints.Pelvis).ByChannels(root);
        // One jaw turns as the other does; the right wrist has no twist of its own, and the left one's dial is on the middle as well.
        var jaws = Side.Both.ToDictionary(side => side, side => joints.Head.Child($"jaw_{side}", at: new Vector3(0.05f * side.Sign, 0, 0.1f)));
        rig.Drive(jaws[Side.Left]).ByChannels(rig.Control("turn_jaw_left").Under(root).PlacedAt(jaws[Side.Left]));
        rig.Response(rig.Angle(jaws[Side.Left]).About(Axis.Y)).Key(-30, -30).Key(30, 30).OntoTurn(jaws[Side.Right], Axis.Y);
        foreach (var side in Side.Both)
            rig.Drive(joints.Wrist[side]).ByChannels(rig.Control($"hand_{side}").Under(root).PlacedAt(joints.Wrist[side]));
        var middle = rig.Control("sail").Under(root).PlacedAt(joints.Chest);
        var hoist = rig.Control("hoist_left").Under(root).PlacedAt(joints.Wrist.Left).Dial("hoist", 0, 10).AlsoOn(middle);
        var lower = rig.Control("hoist_right").Under(root).PlacedAt(joints.Wrist.Right).Dial("hoist", 0, 10);
        var thumb = joints.Wrist.Right.Child("thumb_right", at: new Vector3(-0.03f, 0, 0.03f));
        rig.Response(hoist).Key(0, 0).Key(10, 10).OntoTurn(thumb, Axis.X).OntoTurn(middle, Axis.X);
        rig.Response(lower).Key(0, 0).Key(10, 0.1f).OntoMove(thumb, Axis.X);
    }
}
