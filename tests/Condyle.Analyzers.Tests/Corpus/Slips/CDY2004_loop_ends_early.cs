namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var root = rig.Control("root");
        foreach (var side in Side.Both)
        {
            var leg = rig.Chain(joints.Hip[side], joints.Toes[side]);
            var fk = leg.Copy("fk").Under(rig.Group($"leg_{side}_group").Under(root));
            Node above = root;
            foreach (var joint in leg)
            {
                var turn = rig.Control($"turn_{joint}").Under(above).PlacedAt(joint);
                rig.Drive(fk.Of(joint)).ByChannels(turn);
                above = turn;
            }

            for (var i = 0; i + 1 < leg.Count; i++)
                rig.Drive(leg[i]).ByChannels(fk.Of(leg[i])); // finds CDY2004
        }
    }
}
