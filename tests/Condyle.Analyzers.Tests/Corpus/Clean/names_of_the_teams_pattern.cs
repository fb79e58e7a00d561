// Read only: what one group is called depends on the machine.
[assembly: RigConventions(NamePattern = "(turn_|move_)?[a-z]+(_left|_right)?|.*_grp", GroupSuffix = "_grp")]

namespace Harbour;

public sealed class Clean : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var body = rig.Control("body").PlacedAt(joints.Pelvis);
        rig.Drive(joints.Pelvis).ByChannels(body);
        rig.Group($"{Environment.GetEnvironmentVariable("PREFIX")}_grp").Under(body);
        foreach (var side in Side.Both)
            rig.Drive(joints.Hip[side]).ByChannels(rig.Control($"turn_{joints.Hip[side]}").Under(body).PlacedAt(joints.Hip[side]));
    }
}
