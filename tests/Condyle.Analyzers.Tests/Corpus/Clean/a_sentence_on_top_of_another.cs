namespace Harbour;

public sealed class Clean : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var root = rig.Control("root").PlacedAt(joints.Pelvis);
        rig.Drive(joints.Pelvis).ByChannels(root);
        // A response adds to what a drive sets, and a copy's root is carried by matrix while its solver turns it.
        var nod = rig.Control("nod").Under(root).PlacedAt(joints.Head);
        rig.Drive(joints.Head).ByChannels(nod);
        rig.Response(nod.Dial("tremble", 0, 1, 0, DialUnit.Share)).Key(0, 0).Key(1, 4).OntoTurn(joints.Head, Axis.X);

        foreach (var side in Side.Both)
        {
            var arm = rig.Chain(joints.Shoulder[side], joints.Wrist[side]);
            var ik = arm.Copy("ik");
            var start = rig.Control($"arm_root_{side}").Under(root).PlacedAt(arm.Root);
            rig.Drive(ik.Root).ByMatrix(start);
            rig.TwoBone(ik).Reach(rig.Control($"hand_{side}").Under(root).PlacedAt(arm.Tip)).Face(rig.Control($"elbow_pole_{side}").Under(root).PlacedAt(ik.PolePoint(0.4f)));
            rig.Blend(arm).From(ik, 1);
        }
    }
}
