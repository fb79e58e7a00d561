[assembly: RigConventions(NamePattern = "(turn|move)_[a-z]+(_left|_right)?")]

namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var above = rig.Control("move_body").PlacedAt(joints.Pelvis);
        rig.Drive(joints.Pelvis).ByChannels(above);
        foreach (var (verb, joint) in new[] { ("turn", joints.Waist), ("bend", joints.Chest) })
        {
            var control = Named(rig, verb, joint).Under(above).PlacedAt(joint);
            rig.Drive(joint).ByChannels(control);
            above = control;
        }
    }

    private static Control Named(RigDraft rig, string verb, Joint joint) => rig.Control($"{verb}_{joint}"); // finds CDY1007
}
