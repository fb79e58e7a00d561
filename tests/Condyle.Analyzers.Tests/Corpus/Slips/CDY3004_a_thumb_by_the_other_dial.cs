namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var root = rig.Control("root").PlacedAt(joints.Pelvis);
        rig.Drive(joints.Pelvis).ByChannels(root);
        var wrists = Side.Both.Select(side => rig.Control($"hand_{side}").Under(root).PlacedAt(joints.Wrist[side])).ToList();
        rig.Drive(joints.Wrist.Left).ByChannels(wrists[0]);
        rig.Drive(joints.Wrist.Right).ByChannels(wrists[1]);
        var thumbLeft = joints.Wrist.Left.Child("thumb_left", at: new Vector3(0.03f, 0, 0.03f));
        var thumbRight = joints.Wrist.Right.Child("thumb_right", at: new Vector3(-0.03f, 0, 0.03f));
        var curlLeft = wrists[0].Dial("curl", 0, 60);
        var curlRight = wrists[1].Dial("curl", 0, 60);
        rig.Response(curlLeft).Key(0, 0).Key(60, 60).OntoTurn(thumbLeft, Axis.X);
        rig.Response(curlLeft).Key(0, 0).Key(60, 60).OntoTurn(thumbRight, Axis.X); // finds CDY3004
    }
}
