namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var pelvis = rig.Skeleton("sailor").Root("pelvis");
        rig.Drive(pelvis).ByChannels(rig.Control("root").PlacedAt(pelvis));
        var elbows = Side.Both.Select(side => pelvis.Child($"elbow_{side}", at: new Vector3(0.4f * side.Sign, 0.3f, 0))).ToList();
        var twists = Side.Both.Select((side, i) => elbows[i].Child($"elbow_twist_{side}", JointRole.Twist, at: new Vector3(0.1f * side.Sign, 0, 0))).ToList();
        var wrists = Side.Both.Select((side, i) => twists[i].Child($"wrist_{side}", at: new Vector3(0.1f * side.Sign, 0, 0))).ToList();
        for (var i = 0; i < 2; i++)
        {
            var bend = rig.Control($"turn_{elbows[i]}").Under(pelvis).PlacedAt(elbows[i]);
            rig.Drive(elbows[i]).ByChannels(bend);
            rig.Drive(wrists[i]).ByChannels(rig.Control($"turn_{wrists[i]}").Under(bend).PlacedAt(wrists[i]));
            rig.Twist(twists[i]).Between(elbows[i], wrists[1 - i]); // finds CDY3003
        }
    }
}
