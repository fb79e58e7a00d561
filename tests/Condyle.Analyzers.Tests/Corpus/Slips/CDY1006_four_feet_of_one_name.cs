namespace Harbour;

// Seven groups on each side are called alike: one finding for the sentence that makes them a second time.
public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var pelvis = rig.Skeleton("dog").Root("pelvis", at: new Vector3(0, 0.5f, -0.2f));
        var chest = pelvis.Child("chest", at: new Vector3(0, 0, 0.4f));
        var systems = rig.Group("systems_group");
        var world = rig.Control("world").PlacedAt(pelvis);
        rig.Drive(pelvis).ByChannels(world);
        var front = rig.Control("turn_chest").Under(world).PlacedAt(chest).Lock(Channels.Move);
        rig.Drive(chest).ByChannels(front);
        foreach (var side in Side.Both)
        {
            var hip = pelvis.Child($"hip_{side}", at: new Vector3(side.Sign * 0.09f, 0, 0));
            var hock = hip.Child($"knee_{side}", at: new Vector3(0, -0.2f, 0.08f)).Child($"hock_{side}", at: new Vector3(0, -0.19f, -0.12f));
            var hindPaw = hock.Child($"hind_paw_{side}", at: new Vector3(0, -0.1f, 0.05f));
            var hind = rig.Limb(rig.Chain(hip, hock), "hind_leg", side, world, systems, world, new LimbOptions { Goal = "hind_foot" });
            rig.FootRoll(hind, hindPaw, heel: new(0, -0.11f, -0.03f), tip: new(0, -0.01f, 0.05f));

            var shoulder = chest.Child($"shoulder_{side}", at: new Vector3(side.Sign * 0.08f, 0, 0));
            var wrist = shoulder.Child($"elbow_{side}", at: new Vector3(0, -0.2f, -0.06f)).Child($"wrist_{side}", at: new Vector3(0, -0.2f, 0.02f));
            var forePaw = wrist.Child($"fore_paw_{side}", at: new Vector3(0, -0.09f, 0.05f));
            var fore = rig.Limb(rig.Chain(shoulder, wrist), "fore_leg", side, front, systems, world, new LimbOptions { Goal = "fore_foot" });
            rig.FootRoll(fore, forePaw, heel: new(0, -0.09f, -0.03f), tip: new(0, -0.01f, 0.05f)); // finds CDY1006
        }
    }
}
