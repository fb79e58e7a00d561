namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var cleat = rig.Skeleton("rope").Root("rope_0", at: new Vector3(0, 0.5f, 0));
        var joint = cleat;
        for (var i = 1; i < 5; i++)
            joint = joint.Child($"rope_{i}", at: new Vector3(0, i % 2 == 0 ? 0.05f : -0.05f, 0.5f));
        var rope = rig.Chain(cleat, joint);
        var ship = rig.Control("ship").PlacedAt(cleat);
        var parts = rig.Group("rope_group").PlacedAt(ship);
        rig.Drive(parts).ByMatrix(ship);
        var slack = ship.Switch("slack");

        rig.Blend(rope).From(Posed(rig, rope, "taut", parts, ship), slack.Inverse).From(Posed(rig, rope, "loose", parts, ship), slack);
    }

    private static Copy Posed(RigDraft rig, Chain rope, string tag, Group parts, Node above)
    {
        var copy = rope.Copy(tag).Under(parts); // finds CDY5004
        for (var i = 0; i < rope.Count; i++)
        {
            if (i % 3 == 2)
                continue;
            var control = rig.Control($"{tag}_turn_{rope[i]}").Under(above).PlacedAt(rope[i]);
            rig.Drive(copy.Of(rope[i])).ByChannels(control);
            above = control;
        }

        return copy;
    }
}
