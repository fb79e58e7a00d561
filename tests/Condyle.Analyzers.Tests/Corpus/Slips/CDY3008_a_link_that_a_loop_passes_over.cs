namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joint = rig.Skeleton("eel").Root("head");
        var above = rig.Control("eel").PlacedAt(joint).LimitMove(Axis.Z, 0, Environment.ProcessorCount);
        rig.Drive(joint).ByChannels(above);
        for (var i = 1; i <= 6; i++)
        {
            joint = joint.Child($"tail_{i}", at: new Vector3(0, 0, -0.2f));
            var control = rig.Control($"turn_{joint}").Under(above).PlacedAt(joint);
            if (i != 4)
                rig.Drive(joint).ByChannels(control); // finds CDY3008
            above = control;
        }
    }
}
