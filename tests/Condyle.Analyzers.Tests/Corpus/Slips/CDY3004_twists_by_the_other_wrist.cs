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
            var twist = joints.Elbow[side].Child($"elbow_twist_{side}", JointRole.Twist, at: new Vector3(0.13f * side.Sign, 0, 0));
            rig.Drive(joints.Wrist[side]).ByChannels(rig.Control($"hand_{side}").Under(root).PlacedAt(joints.Wrist[side]));
            rig.Twist(twist).Between(joints.Elbow[side], joints.Wrist[side.Opposite]); // finds CDY3004
        }
    }
}
