namespace Harbour;

public sealed class Clean : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var root = rig.Control("root").PlacedAt(joints.Pelvis);
        rig.Drive(joints.Pelvis).ByChannels(root);
        var hands = Side.Both.ToDictionary(side => side, side => rig.Control($"hand_{side}").Under(root).PlacedAt(joints.Wrist[side]));
        var poles = Side.Both.ToDictionary(side => side, side => rig.Control($"elbow_pole_{side}").Under(root).PlacedAt(rig.Chain(joints.Shoulder[side], joints.Wrist[side]).PolePoint(0.4f)));
        foreach (var side in Side.Both)
        {
            // Each arm bends to its own pole, and where it takes hold to the other's.
            var arm = rig.Chain(joints.Shoulder[side], joints.Wrist[side]);
            var (ik, hold) = (arm.Copy("ik").Under(root), arm.Copy("hold").Under(root));
            rig.TwoBone(ik).Reach(hands[side]).Face(poles[side]);
            rig.TwoBone(hold).Reach(hands[side]).Face(poles[side.Opposite]);
            var held = hands[side].Switch("held");
            rig.Blend(arm).From(ik, held.Inverse).From(hold, held);

            // Arms swing against the legs.
            rig.Drive(joints.Hip[side]).ByChannels(rig.Control($"swing_hip_{side}").Under(root).PlacedAt(joints.Hip[side]));
            rig.Response(rig.Angle(joints.Hip[side]).About(Axis.X)).Key(-40, -20).Key(40, 20).OntoTurn(joints.Collar[side.Opposite], Axis.X);
        }
    }
}
