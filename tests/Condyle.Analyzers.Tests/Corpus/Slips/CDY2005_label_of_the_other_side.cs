namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var amounts = new List<Switch>();
        foreach (var side in Side.Both)
        {
            var (held, loose) = (rig.Control($"held_{side}").PlacedAt(joints.Wrist[side]), rig.Control($"loose_{side}").PlacedAt(joints.Wrist[side]));
            amounts.Add(held.Switch("loose"));
            rig.Blend((Node)joints.Wrist[side]).From(held, amounts[^1].Inverse).From(loose, amounts[^1]);
        }

        rig.Label("loose_label_left", "loose").ShownBy(amounts[0]);
        rig.Label("loose_label_right", "loose").ShownBy(amounts[0]); // finds CDY2005
    }
}
