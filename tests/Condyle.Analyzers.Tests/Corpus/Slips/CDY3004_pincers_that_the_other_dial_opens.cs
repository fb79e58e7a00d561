namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var root = rig.Control("root").PlacedAt(joints.Pelvis);
        rig.Drive(joints.Pelvis).ByChannels(root);
        foreach (var side in Side.Both)
            Claw(side, rig.Control($"claw_{side}").Under(root).PlacedAt(joints.Wrist[side]));
        var pincers = Side.Both.ToDictionary(side => side, side => joints.Wrist[side].Child($"pincer_{side}", at: new Vector3(0.05f * side.Sign, 0, 0)));
        var (left, right) = (rig.Control("grip_left").Under(root).PlacedAt(joints.Wrist.Left), rig.Control("grip_right").Under(root).PlacedAt(joints.Wrist.Right));
        var openLeft = left.Dial("open", 0, 40);
        var openRight = right.Dial("open", 0, 40);
        rig.Response(openLeft).Key(0, 0).Key(40, 40).OntoTurn(pincers[Side.Left], Axis.Y).OntoTurn(pincers[Side.Right], Axis.Y); // finds CDY3004

        void Claw(Side side, Control claw) => rig.Drive(joints.Wrist[side]).ByChannels(claw);
    }
}
