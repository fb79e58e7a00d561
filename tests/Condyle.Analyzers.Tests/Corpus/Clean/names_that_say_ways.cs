namespace Harbour;

public sealed class Clean : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var root = rig.Control("root").PlacedAt(joints.Pelvis);
        rig.Drive(joints.Pelvis).ByChannels(root);
        // Which way a handle slides, how lines run and lie, and what the modeller called a joint.
        Hook(joints.Wrist.Right, "slide_left_right");
        foreach (var side in Side.Both)
        {
            Hook(joints.Wrist[side], $"line_left_to_{side}");
            Hook(joints.Wrist[side], $"left_over_{side}");
            Hook(joints.Toes[side], $"roll_left_right_{side}");
            var fin = joints.Hip[side].Child($"fin_left_{side}", at: new Vector3(0.1f * side.Sign, 0, 0));
            rig.Drive(fin).ByChannels(rig.Control($"turn_{fin}").Under(root).PlacedAt(fin));
        }

        void Hook(Joint at, string name)
        {
            var hook = at.Child($"hook_{name}");
            rig.Drive(hook).ByChannels(rig.Control(name).Under(root).PlacedAt(hook));
        }
    }
}
