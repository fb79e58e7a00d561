namespace Harbour;

public sealed class Clean : IRigDefinition
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

        var taut = rope.Copy("taut").Under(parts);
        rig.Drive(taut.Root).ByChannels(ship);
        rig.Drive(taut.Tip).ByChannels(rig.Control("quay").PlacedAt(joint));
        var loose = rope.Copy("loose").Under(parts);
        Node above = ship;
        foreach (var link in rope.Skip(1).SkipLast(1))
        {
            var control = rig.Control($"turn_{link}").Under(above).PlacedAt(link);
            rig.Drive(loose.Of(link)).ByChannels(control);
            above = control;
        }

        rig.Blend(rope).From(taut, slack.Inverse).From(loose, slack);
    }
}
