namespace Harbour;

public sealed class Clean : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        foreach (var side in Side.Both)
        {
            var leg = rig.Chain(joints.Hip[side], joints.Ankle[side]);
            var foot = rig.Control($"foot_{side}").PlacedAt(leg.Tip);
            var ik = leg.Copy("ik");
            rig.Drive(ik.Root).ByChannels(rig.Control($"leg_{side}").PlacedAt(leg.Root));
            var held = leg.Copy("held").Under(rig.Group($"held_{side}_group").PlacedAt(leg.Root));
            var hold = foot.Switch("held");
            rig.Blend(leg).From(ik, hold.Inverse).From(held, hold);
        }
    }
}
