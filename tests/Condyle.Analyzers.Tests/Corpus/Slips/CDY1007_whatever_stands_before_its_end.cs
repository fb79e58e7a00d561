// Read only: what the group is called depends on the machine.
[assembly: RigConventions(NamePattern = "[a-z_]+")]

namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var prefix = Environment.GetEnvironmentVariable("PREFIX");
        rig.Group($"{prefix}-parts_group"); // finds CDY1007
    }
}
