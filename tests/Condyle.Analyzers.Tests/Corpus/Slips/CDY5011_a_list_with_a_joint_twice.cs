namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var root = rig.Control("root").PlacedAt(joints.Pelvis);
        rig.Drive(joints.Pelvis).ByChannels(root);
        var bow = root.Dial("bow", 0, 30);
        var response = rig.Response(bow).Key(0, 0).Key(30, 15);
        foreach (var joint in new[] { joints.Waist, joints.Chest, joints.Waist })
            Bend(response, joint);
    }

    private static void Bend(Response response, Joint joint) => response.OntoTurn(joint, Axis.X); // finds CDY5011
}
