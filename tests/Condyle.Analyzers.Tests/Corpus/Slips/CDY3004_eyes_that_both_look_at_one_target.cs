namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var root = rig.Control("root").PlacedAt(joints.Pelvis);
        rig.Drive(joints.Pelvis).ByChannels(root);
        var eyes = Side.Both.ToDictionary(side => side, side => joints.Head.Child($"eye_{side}", at: new Vector3(0.03f * side.Sign, 0.1f, 0.1f)));
        var targets = Side.Both.ToDictionary(side => side, side => rig.Control($"gaze_{side}").Under(root).PlacedAt(rig.Spot(joints.Head, new Vector3(0.03f * side.Sign, 0.1f, 1))));
        foreach (var eye in eyes.Values)
            rig.Aim(eye).At(targets[Side.Left]); // finds CDY3004
    }
}
