namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        foreach (var side in Side.Both)
        {
            var sources = new List<Control> { rig.Control($"foot_{side}").PlacedAt(joints.Ankle[side]) };
            var blend = rig.Blend((Node)joints.Ankle[side]);
            foreach (var source in sources)
                blend.From(source, 1f / sources.Count); // finds CDY2002
        }
    }
}
