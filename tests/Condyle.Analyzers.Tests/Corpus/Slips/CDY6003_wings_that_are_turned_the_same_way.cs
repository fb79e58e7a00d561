namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var root = rig.Skeleton("gull").Root("body", at: new Vector3(0, 1, 0));
        var body = rig.Control("move_body").PlacedAt(root);
        rig.Drive(root).ByChannels(body);
        foreach (var side in Side.Both)
        {
            var wing = root.Child($"wing_{side}", at: new Vector3(0.2f * side.Sign, 0, 0), turned: Quaternion.CreateFromAxisAngle(Vector3.UnitY, 0.6f));
            var tip = wing.Child($"tip_{side}", at: new Vector3(0.3f * side.Sign, 0, 0));
            var control = rig.Control($"turn_wing_{side}").Under(body).PlacedAt(wing); // finds CDY6003
            rig.Drive(wing).ByChannels(control);
            rig.Drive(tip).ByChannels(rig.Control($"turn_tip_{side}").Under(control).PlacedAt(tip));
        }
    }
}
