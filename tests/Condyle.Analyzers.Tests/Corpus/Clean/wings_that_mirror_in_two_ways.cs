namespace Harbour;

public sealed class Clean : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var root = rig.Skeleton("gull").Root("body", at: new Vector3(0, 1, 0));
        var body = rig.Control("move_body").PlacedAt(root);
        rig.Drive(root).ByChannels(body);
        foreach (var side in Side.Both)
        {
            // Turned with the body; half a turn about X on the right; and a little off, as hand-made skeletons are.
            Wing(rig, root, $"wing_{side}", new Vector3(0.2f * side.Sign, 0, 0), 0.6f * side.Sign, body);
            Wing(rig, root, $"tail_{side}", new Vector3(0.05f * side.Sign, 0, -0.3f), side == Side.Left ? 0 : MathF.PI, body);
            Wing(rig, root, $"foot_{side}", new Vector3(0.1f * side.Sign, -0.3f, 0), side == Side.Left ? 0.1f : 0, body);
        }

        // A tuft on either side, but not opposite each other.
        Wing(rig, root, "tuft_left", new Vector3(0.05f, 0.2f, 0), 0.5f, body);
        Wing(rig, root, "tuft_right", new Vector3(-0.02f, 0.15f, 0.1f), 0.5f, body);
    }

    private static Control Wing(RigDraft rig, Joint above, string name, Vector3 at, float turned, Node under)
    {
        var wing = above.Child(name, at: at, turned: Quaternion.CreateFromAxisAngle(Vector3.UnitY, turned));
        var control = rig.Control($"turn_{name}").Under(under).PlacedAt(wing);
        rig.Drive(wing).ByChannels(control);
        return control;
    }
}
