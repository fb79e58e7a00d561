namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var crane = rig.Skeleton("crane").Root("jib", at: new Vector3(0, 4, 0));
        var drum = rig.Control("drum").PlacedAt(crane);
        rig.Drive(crane).ByChannels(drum);
        foreach (var (name, least, most) in new[] { ("hook", 0f, 3f), ("ball", 0.5f, 2f), ("block", -1f, -0.2f) })
        {
            var joint = crane.Child(name, at: new Vector3(0, -2, 0));
            rig.Drive(joint).ByChannels(Hoist(rig.Control($"hoist_{name}").Under(drum).PlacedAt(joint), least, most));
        }
    }

    private static Control Hoist(Control control, float least, float most) => control.LimitMove(Axis.Y, least, most); // finds CDY5007
}
