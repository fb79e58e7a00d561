namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var root = rig.Control("root").PlacedAt(joints.Pelvis);
        rig.Drive(joints.Pelvis).ByChannels(root);
        foreach (var side in Side.Both)
        {
            var turn = rig.Control($"turn_knee_{side}").Under(root).PlacedAt(joints.Knee[side]).Lock(Channels.All & ~Channels.TurnX);
            rig.Drive(joints.Knee[side]).ByChannels(turn);
            turn.LimitTurn(Axis.Y, -30, 30); // finds CDY5010
        }
    }
}
