namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var root = rig.Skeleton("sling").Root("hook");
        rig.Drive(root).ByChannels(rig.Control("move_hook").PlacedAt(root));
        for (var i = 1; i < 4; i++)
        {
            var crate = root.Child($"crate_{i}", at: new Vector3(0, -i, 0));
            rig.Drive(crate).ByChannels(rig.Control($"sway_{i / 2}").PlacedAt(crate)); // finds CDY1002
        }
    }
}
