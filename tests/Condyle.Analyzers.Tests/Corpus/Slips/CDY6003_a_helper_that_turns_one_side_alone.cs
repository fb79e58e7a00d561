namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var root = rig.Skeleton("gull").Root("body", at: new Vector3(0, 1, 0));
        var body = rig.Control("move_body").PlacedAt(root);
        rig.Drive(root).ByChannels(body);
        Wing(rig, root, "wing_left", new Vector3(0.2f, 0, 0), 0, body);
        Wing(rig, root, "wing_right", new Vector3(-0.2f, 0, 0), MathF.PI / 6, body);
    }

    private static Control Wing(RigDraft rig, Joint above, string name, Vector3 at, float turned, Node under)
    {
        var wing = above.Child(name, at: at, turned: Quaternion.CreateFromAxisAngle(Vector3.UnitY, turned));
        var control = rig.Control($"turn_{name}").Under(under).PlacedAt(wing); // finds CDY6003
        rig.Drive(wing).ByChannels(control);
        return control;
    }
}
