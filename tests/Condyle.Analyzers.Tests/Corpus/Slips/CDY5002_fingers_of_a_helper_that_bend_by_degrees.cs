namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var hand = rig.Skeleton("glove").Root("hand", at: new Vector3(0, 1, 0));
        var control = rig.Control("move_hand").PlacedAt(hand);
        rig.Drive(hand).ByChannels(control);
        var curl = control.Dial("curl", 0, 1);
        for (var finger = 0; finger < 4; finger++)
            Curl(rig, curl, hand.Child($"finger_{finger}", at: new Vector3(0.02f * finger, 0, 0.1f)));
    }

    private static void Curl(RigDraft rig, Dial curl, Joint finger) =>
        rig.Response(curl).Key(0, 0).Key(45, 30).Key(90, 80).OntoTurn(finger, Axis.X); // finds CDY5002
}
