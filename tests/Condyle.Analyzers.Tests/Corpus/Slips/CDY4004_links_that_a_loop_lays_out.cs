namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var skeleton = rig.Skeleton("anchor_cable");
        var chain = rig.Control("cable");
        for (var i = 0; i < 4; i++)
            Link(rig, skeleton, i, chain);
    }

    private static void Link(RigDraft rig, Skeleton skeleton, int number, Control cable)
    {
        var link = skeleton.Root($"link_{number}", at: new Vector3(0, -0.2f * number, 0)); // finds CDY4004
        rig.Drive(link).ByChannels(rig.Control($"turn_{link}").Under(cable).PlacedAt(link));
    }
}
