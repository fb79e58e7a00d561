namespace Harbour;

public sealed class Clean : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var root = rig.Control("root").PlacedAt(joints.Pelvis);
        rig.Drive(joints.Pelvis).ByChannels(root);
        // The copy hangs in the world, but each of its joints lands on a control that goes with the body.
        foreach (var side in Side.Both)
        {
            var leg = rig.Chain(joints.Hip[side], joints.Ankle[side]);
            var fk = leg.Copy("fk");
            Node above = root;
            foreach (var joint in leg)
            {
                var control = rig.Control($"turn_{joint}").Under(above).PlacedAt(joint);
                rig.Drive(fk.Of(joint)).ByChannels(control);
                above = control;
            }

            rig.Blend(leg).From(fk, 1);
        }
    }
}
