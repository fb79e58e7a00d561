namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var solved = new HashSet<Side> { Side.Left };
        foreach (var side in Side.Both)
        {
            var leg = rig.Chain(joints.Hip[side], joints.Ankle[side]);
            var ik = leg.Copy("ik"); // finds CDY7002
            var foot = rig.Control($"foot_{side}").PlacedAt(leg.Tip);
            if (solved.Contains(side))
                rig.TwoBone(ik).Reach(foot);
            var hold = leg.Copy("hold");
            rig.TwoBone(hold).Reach(foot);
            var held = foot.Switch("held");
            rig.Blend(leg).From(ik, held.Inverse).From(hold, held);
        }
    }
}
