// Read only: the name of a control is known where it runs.
namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var root = rig.Skeleton("gull").Root("body", at: new Vector3(0, 1, 0));
        var body = rig.Control("move_body").PlacedAt(root);
        rig.Drive(root).ByChannels(body);
        var under = rig.Control(Environment.MachineName).Under(body);
        foreach (var side in Side.Both)
            Wing(rig, root, $"foot_{side}", new Vector3(0.1f * side.Sign, -0.3f, 0), 0.5f, under);
    }

    private static Control Wing(RigDraft rig, Joint above, string name, Vector3 at, float turned, Node under)
    {
        var wing = above.Child(name, at: at, turned: Quaternion.CreateFromAxisAngle(Vector3.UnitY, turned));
        var control = rig.Control($"turn_{name}").Under(under).PlacedAt(wing); // finds CDY6003
        rig.Drive(wing).ByChannels(control);
        return control;
    }
}
