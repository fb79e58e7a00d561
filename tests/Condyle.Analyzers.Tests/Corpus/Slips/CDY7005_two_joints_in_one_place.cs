namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = new List<Joint> { rig.Skeleton("davit").Root("foot") };
        foreach (var (name, rise) in new[] { ("mast", 1.5f), ("swivel", 0f), ("hook", 1f) })
            joints.Add(joints[^1].Child(name, at: new Vector3(0, rise * 0.2f, rise)));
        var jib = rig.Chain(joints[1], joints[3]).Bending(Vector3.UnitX);
        var ik = jib.Copy("ik");
        rig.TwoBone(ik).Reach(rig.Control("lower").PlacedAt(jib.Tip)); // finds CDY7005
        rig.Blend(jib).From(ik, 1);
    }
}
