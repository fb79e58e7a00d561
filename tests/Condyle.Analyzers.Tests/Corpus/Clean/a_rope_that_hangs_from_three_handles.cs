namespace Harbour;

public sealed class Clean : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var first = rig.Skeleton("rope").Root("rope_0", at: new Vector3(0, 0.5f, 0));
        List<Joint> joints = [first];
        for (var i = 1; i < 7; i++)
            joints.Add(joints[^1].Child($"rope_{i}", at: new Vector3(0, -0.05f, 0.5f)));
        var ship = rig.Control("ship_end").PlacedAt(joints[0]);
        var middle = rig.Control("middle").PlacedAt(joints[3]);
        var quay = rig.Control("quay_end").PlacedAt(joints[6]);
        foreach (var (joint, above) in joints.Zip([ship, middle, middle, middle, middle, middle, quay]))
            rig.Drive(joint).ByChannels(rig.Control($"move_{joint}").Under(above).PlacedAt(joint));
    }
}
