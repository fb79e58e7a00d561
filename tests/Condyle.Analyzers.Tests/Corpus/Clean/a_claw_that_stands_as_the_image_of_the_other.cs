namespace Harbour;

public sealed class Clean : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var shell = rig.Skeleton("crab").Root("shell", at: new Vector3(0, 0.1f, 0));
        var body = rig.Control("body").PlacedAt(shell);
        rig.Drive(shell).ByChannels(body);
        var left = shell.Child("claw_left", at: new Vector3(0.1f, 0, 0.1f));
        var right = shell.Child("claw_right", at: new Vector3(-0.1f, 0, 0.1f));

        // The same values make the mirrored motion, so both claws have the same limits.
        var turnLeft = Limited(rig.Control("turn_claw_left").Under(body).PlacedAt(left));
        var turnRight = Limited(rig.Control("turn_claw_right").Under(body).Mirroring(turnLeft));
        rig.Drive(left).ByChannels(turnLeft);
        rig.Drive(right).ByChannels(turnRight).KeepingOffset();
    }

    private static Control Limited(Control claw) => claw.LimitTurn(Axis.X, -10, 35).LimitTurn(Axis.Y, -20, 60).LimitTurn(Axis.Z, -5, 15).LimitMove(Axis.X, -0.01f, 0.03f);
}
