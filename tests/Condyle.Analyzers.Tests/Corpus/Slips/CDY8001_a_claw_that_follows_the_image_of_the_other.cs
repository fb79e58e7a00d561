namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var shell = rig.Skeleton("crab").Root("shell", at: new Vector3(0, 0.1f, 0));
        var body = rig.Control("body").PlacedAt(shell);
        rig.Drive(shell).ByChannels(body);
        var left = shell.Child("claw_left", at: new Vector3(0.1f, 0, 0.1f));
        var right = shell.Child("claw_right", at: new Vector3(-0.1f, 0, 0.1f));
        var turnLeft = rig.Control("turn_claw_left").Under(body).PlacedAt(left);
        var turnRight = rig.Control("turn_claw_right").Under(body).Mirroring(turnLeft);
        rig.Drive(left).ByChannels(turnLeft);
        rig.Drive(right).ByChannels(turnRight); // finds CDY8001
    }
}
