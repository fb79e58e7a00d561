namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var switches = Side.Both.ToDictionary(side => side, side => rig.Control($"grip_{side}").PlacedAt(joints.Wrist[side]).Switch("let_go"));
        foreach (var (side, amount) in new[] { (Side.Left, switches[Side.Left]), (Side.Right, switches[Side.Left]) })
        {
            var (held, loose) = (rig.Control($"held_{side}").PlacedAt(joints.Wrist[side]), rig.Control($"loose_{side}").PlacedAt(joints.Wrist[side]));
            var blend = rig.Blend((Node)joints.Wrist[side]);
            blend.From(held, amount.Inverse); // finds CDY2005
            blend.From(loose, amount);
        }
    }
}
