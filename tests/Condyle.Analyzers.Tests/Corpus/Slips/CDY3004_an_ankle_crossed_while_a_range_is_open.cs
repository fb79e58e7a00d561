namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var root = rig.Control("root").PlacedAt(joints.Pelvis);
        rig.Drive(joints.Pelvis).ByChannels(root);
        var bend = Side.Both.ToDictionary(side => side, side => rig.Control($"bend_ankle_{side}").Under(root).PlacedAt(joints.Ankle[side]).LimitTurn(Axis.X, -10 - (Environment.ProcessorCount % 7), 90));
        foreach (var side in Side.Both)
            rig.Drive(joints.Ankle[side]).ByChannels(bend[side.Opposite]); // finds CDY3004
    }
}
