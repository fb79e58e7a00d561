namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        foreach (var name in new[] { "eel", "moray" })
        {
            var tail = new List<Joint> { rig.Skeleton(name).Root($"{name}_0") };
            foreach (var step in new[] { 0.2f, 0, 0.15f, 0.1f })
                tail.Add(tail[^1].Child($"{name}_{tail.Count}", at: new Vector3(0, 0.1f * step * step, -step)));
            Swim(rig, rig.Chain(tail[0], tail[^1]), name);
        }
    }

    private static void Swim(RigDraft rig, Chain tail, string name)
    {
        var swim = tail.Copy("swim");
        var curve = rig.Curve(swim); // finds CDY7005
        foreach (var joint in new[] { tail.Root, tail[2], tail.Tip })
            curve.Through(rig.Control($"{name}_at_{joint}").PlacedAt(joint));
        rig.Blend(tail).From(swim, 1);
    }
}
