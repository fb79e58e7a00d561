namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var lamp = rig.Skeleton("lamp").Root("lamp", at: new Vector3(0, 2, 0));
        var control = rig.Control("turn_lamp").PlacedAt(lamp);
        rig.Drive(lamp).ByChannels(control);
        foreach (var (name, percent) in new[] { ("dim", 0.5f), ("bright", 80) })
            rig.Response(Share(control, name, percent)).Key(0, 0).Key(1, 1).OntoMorph("lamp", name);
    }

    private static Dial Share(Control control, string name, float atRest) => control.Dial(name, 0, 1, atRest); // finds CDY5008
}
