[assembly: RigConventions(MostJoints = "24")]

namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var link = rig.Skeleton("anchor_cable").Root("link_0");
        var above = rig.Control("cable").PlacedAt(link);
        rig.Drive(link).ByChannels(above);
        for (var i = 1; i < 30; i++)
        {
            link = Next(link, i);
            var control = rig.Control($"turn_{link}").Under(above).PlacedAt(link);
            rig.Drive(link).ByChannels(control);
            above = control;
        }
    }

    private static Joint Next(Joint link, int number) => link.Child($"link_{number}", at: new Vector3(0, -0.2f, 0)); // finds CDY4006
}
