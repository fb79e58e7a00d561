namespace Harbour;

public sealed class Clean : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var shell = rig.Skeleton("crab").Root("shell", at: new Vector3(0, 0.3f, 0));
        var scuttle = rig.Control("scuttle").PlacedAt(shell);
        rig.Drive(shell).ByChannels(scuttle);
        Control[] gaits = [rig.Control("step_even").Under(scuttle), rig.Control("step_odd").Under(scuttle)];
        foreach (var side in Side.Both)
        {
            for (var i = 0; i < 3; i++)
            {
                var leg = shell.Child($"leg_{i}_{side}", at: new Vector3(0.2f * side.Sign, 0, 0.1f * i));
                var gait = gaits[(i + (side == Side.Left ? 0 : 1)) % 2];
                rig.Drive(leg).ByChannels(rig.Control($"step_{i}_{side}").Under(gait).PlacedAt(leg));
            }
        }
    }
}
