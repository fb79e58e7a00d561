namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var root = rig.Skeleton("gull").Root("body", at: new Vector3(0, 1, 0));
        var body = rig.Control("move_body").PlacedAt(root);
        rig.Drive(root).ByChannels(body);
        foreach (var side in Side.Both)
        {
            var turned = Quaternion.CreateFromAxisAngle(Vector3.UnitY, side == Side.Left ? 0 : MathF.PI / 3);
            var foot = root.Child($"foot_{side}", at: new Vector3(0.1f * side.Sign, -0.8f, 0), turned: turned);
            var control = rig.Control($"turn_foot_{side}").Under(body).PlacedAt(foot); // finds CDY6003
            rig.Drive(foot).ByChannels(control.LimitTurn(side == Side.Left ? Axis.X : Axis.Z, -30, 60).Lock(side == Side.Left ? Channels.MoveX : Channels.MoveZ));
        }
    }
}
