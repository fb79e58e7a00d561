namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var carry = rig.Control("carry");
        foreach (var side in Side.Both)
        {
            var held = rig.Group($"held_{side}_grp").PlacedAt(joints.Wrist[side]); // finds CDY1001
            rig.Drive(held).ByMatrix(joints.Wrist[side]);
        }

        var tools = rig.Group("tools_GRP").PlacedAt(joints.Waist); // finds CDY1001
        rig.Drive(tools).ByMatrix(joints.Waist);
        rig.Drive(joints.Pelvis).ByChannels(rig.Control("hips").Under(carry).PlacedAt(joints.Pelvis));
    }
}
