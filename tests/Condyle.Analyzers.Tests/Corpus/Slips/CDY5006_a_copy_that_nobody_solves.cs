namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var root = rig.Control("root").PlacedAt(joints.Pelvis);
        rig.Drive(joints.Pelvis).ByChannels(root);
        foreach (var side in Side.Both)
        {
            var leg = rig.Chain(joints.Hip[side], joints.Ankle[side]);
            var parts = rig.Group($"leg_{side}_group").PlacedAt(root);
            rig.Drive(parts).ByMatrix(root);
            var (stand, step) = (leg.Copy("stand").Under(parts), leg.Copy("step").Under(parts));
            var foot = rig.Control($"foot_{side}").Under(root).PlacedAt(leg.Tip);
            rig.TwoBone(stand).Reach(foot);
            rig.Control($"stride_{side}").Under(root).PlacedAt(leg.Tip); // finds CDY5006
            var striding = foot.Switch("striding");
            rig.Blend(leg).From(stand, striding.Inverse).From(step, striding);
        }
    }
}
