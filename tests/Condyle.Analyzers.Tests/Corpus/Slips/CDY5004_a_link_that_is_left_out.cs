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

        var taut = Posed(rig, rope, "taut", parts, ship);
        var loose = rope.Copy("loose").Under(parts); // finds CDY5004
        Node above = ship;
        foreach (var link in rope)
        {
            if (link.Name == "rope_2")
                continue;
            var control = rig.Control($"loose_turn_{link}").Under(above).PlacedAt(link);
            rig.Drive(loose.Of(link)).ByChannels(control);
            above = control;
        }

        rig.Blend(rope).From(taut, slack.Inverse).From(loose, slack);
    }

    private static Copy Posed(RigDraft rig, Chain rope, string tag, Group parts, Node above)
    {
        var copy = rope.Copy(tag).Under(parts);
        foreach (var link in rope)
        {
            var control = rig.Control($"{tag}_turn_{link}").Under(above).PlacedAt(link);
            rig.Drive(copy.Of(link)).ByChannels(control);
            above = control;
        }

        return copy;
    }
}
