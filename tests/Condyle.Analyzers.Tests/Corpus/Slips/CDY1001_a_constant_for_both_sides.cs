namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        const string Ending = "_parts"; // finds CDY1001
        foreach (var side in Side.Both)
        {
            var name = "leg_" + side + Ending;
            var parts = rig.Group(name).PlacedAt(joints.Pelvis);
            rig.Drive(parts).ByMatrix(joints.Pelvis);
        }
    }
}
