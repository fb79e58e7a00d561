namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var look = rig.Control("look").PlacedAt(joints.Head);
        var amount = look.Switch("amount");
        Follow(rig, joints.Head, look, amount + amount.Inverse);
        rig.Label("look_label", "Look").ShownBy(amount);
    }

    private static void Follow(RigDraft rig, Node node, Control source, Weight weight) =>
        rig.Blend(node)
            .From(source, weight); // finds CDY2002
}
