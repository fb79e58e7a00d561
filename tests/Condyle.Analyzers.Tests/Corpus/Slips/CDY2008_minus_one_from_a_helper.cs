namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        foreach (var side in Side.Both)
        {
            var (held, loose) = (rig.Control($"held_{side}").PlacedAt(joints.Wrist[side]), rig.Control($"loose_{side}").PlacedAt(joints.Wrist[side]));
            var amount = Shown(held, -1);
            rig.Blend((Node)joints.Wrist[side]).From(held, amount.Inverse).From(loose, amount);
        }

        static Switch Shown(Control on, float atRest) => on.Switch("loose", atRest); // finds CDY2008
    }
}
