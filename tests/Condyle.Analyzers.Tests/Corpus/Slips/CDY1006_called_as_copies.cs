namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var root = rig.Control("root");
        foreach (var side in Side.Both)
        {
            var arm = rig.Chain(joints.Shoulder[side], joints.Wrist[side]);
            var parts = rig.Group($"arm_{side}_group");
            rig.Drive(parts).ByMatrix(root);
            var fk = arm.Copy("fk").Under(parts);
            foreach (var joint in arm)
                rig.Drive(fk.Of(joint)).ByChannels(rig.Control(Called("fk", joint)).Under(root).PlacedAt(joint)); // finds CDY1006
            rig.Blend(arm).From(fk, 1f);
        }

        static string Called(string verb, Joint joint) => $"{verb}_{joint}";
    }
}
