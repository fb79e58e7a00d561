namespace Harbour;

public sealed class Clean : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var root = rig.Control("root").PlacedAt(joints.Pelvis);
        rig.Drive(joints.Pelvis).ByChannels(root);
        // Toes of both sides, a neck between moved joints, the first link of a tail and its last one: no slip is known in any.
        foreach (var side in Side.Both)
            rig.Drive(joints.Ankle[side]).ByChannels(rig.Control($"foot_{side}").Under(root).PlacedAt(joints.Ankle[side]));
        var joint = joints.Pelvis;
        Node above = root;
        for (var i = 1; i <= 5; i++)
        {
            joint = joint.Child($"rope_{i}", at: new Vector3(0, 0, -0.2f));
            if (i is 1 or 5)
                continue;
            var control = rig.Control($"turn_{joint}").Under(above).PlacedAt(joint);
            rig.Drive(joint).ByChannels(control);
            above = control;
        }
    }
}
