[assembly: RigConventions(JointScale = "forbidden")]

namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var body = rig.Control("body").PlacedAt(joints.Pelvis).Unlock(Channels.Scale);
        Follow(rig, joints.Pelvis, body);
        foreach (var side in Side.Both)
            Follow(rig, joints.Hip[side], rig.Control($"turn_{joints.Hip[side]}").Under(body).PlacedAt(joints.Hip[side]).Unlock(Channels.Scale));
    }

    private static void Follow(RigDraft rig, Node node, Control control) => rig.Drive(node).ByChannels(control).WithScale(); // finds CDY3009
}
