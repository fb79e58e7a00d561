namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var root = rig.Control("root").PlacedAt(joints.Pelvis);
        rig.Drive(joints.Pelvis).ByChannels(root);
        var bulges = Side.Both.ToDictionary(side => side, side => joints.Elbow[side].Child($"biceps_{side}", JointRole.Helper, at: new Vector3(0.05f * side.Sign, 0.02f, 0)));
        foreach (var side in Side.Both)
        {
            rig.Drive(joints.Elbow[side]).ByChannels(rig.Control($"bend_elbow_{side}").Under(root).PlacedAt(joints.Elbow[side]));
            rig.Response(rig.Angle(joints.Elbow[side]).About(Axis.Y)).Key(0, 0).Key(90, 0.02f).OntoMove(bulges[side.Opposite], Axis.Y); // finds CDY3004
        }
    }
}
