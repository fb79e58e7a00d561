namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var root = rig.Control("root").PlacedAt(joints.Pelvis);
        rig.Drive(joints.Pelvis).ByChannels(root);
        var left = rig.Control("hand_left").Under(root).PlacedAt(joints.Wrist.Left);
        var right = rig.Control("hand_right").Under(root).PlacedAt(joints.Wrist.Right);
        rig.Drive(joints.Wrist.Left).ByChannels(left);
        rig.Drive(joints.Wrist.Right).ByChannels(right);
        var thumbLeft = joints.Wrist.Left.Child("thumb_left", at: new Vector3(0.03f, 0, 0.03f));
        var thumbRight = joints.Wrist.Right.Child("thumb_right", at: new Vector3(-0.03f, 0, 0.03f));
        var curlLeft = left.Dial("curl", 0, 60);
        var curlRight = right.Dial("curl", 0, 60);
        rig.Response(curlLeft).Key(0, 0).Key(60, 60).OntoTurn(thumbLeft, Axis.X);
        rig.Response(curlRight).Key(0, 0).Key(60, 40).OntoTurn(thumbRight, Axis.X);
        rig.Response(curlLeft).Key(0, 0).Key(60, 10).OntoTurn(thumbRight, Axis.Y); // finds CDY3004
    }
}
