namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        foreach (var side in Side.Both)
        {
            var leg = rig.Chain(joints.Hip[side], joints.Ankle[side]);
            var ik = leg.Copy("ik");
            var foot = rig.Control($"foot_{side}").PlacedAt(leg.Tip);
            var pole = rig.Control($"knee_pole_{side}").Under(foot).PlacedAt(foot);
            rig.TwoBone(ik).Reach(foot).Face(pole); // finds CDY7004
            rig.Blend(leg).From(ik, 1);
        }
    }
}
