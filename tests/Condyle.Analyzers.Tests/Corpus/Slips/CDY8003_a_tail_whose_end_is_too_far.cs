namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var bones = new List<Joint> { rig.Skeleton("eel").Root("body", at: new Vector3(0, 0.3f, 0)) };
        for (var i = 0; i < 6; i++)
            bones.Add(bones[^1].Child($"tail_{i}", at: new Vector3(0, 0.01f * i, -0.2f)));
        var body = rig.Control("move_body").PlacedAt(bones[0]);
        rig.Drive(bones[0]).ByChannels(body);
        var fin = bones[^1].Child("fin", JointRole.Helper, at: new Vector3(0, 0, -0.3f));
        var tail = rig.Chain(bones[1], bones[^1]);
        var swim = tail.Copy("swim").Under(body);
        rig.ManyBone(swim).Reach(rig.Control("tail_end").PlacedAt(fin)); // finds CDY8003
        rig.Blend(tail).From(swim, 1);
    }
}
