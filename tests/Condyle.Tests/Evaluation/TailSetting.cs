using Condyle.Evaluation;
using CsCheck;

namespace Condyle.Tests.Evaluation;

/// <summary>A tail away from the tidy case: any bones, joint frames turned at random, a root that isn't at the origin, uneven scale above.</summary>
internal sealed record TailSetting(Vector3d Origin, Quaterniond Facing, Vector3d Scale, Quaterniond[] Frames, Vector3d[] Bones)
{
    /// <summary>Bent, so that the side of the bend is clear, with bones of 5 to 25 cm.</summary>
    public static Gen<TailSetting> Any { get; } = Gen.Select(
        Evaluation.Any.Vector, Evaluation.Any.Rotation, Evaluation.Any.Scale, Gen.Select(Evaluation.Any.Vector, Gen.Double[0.05, 0.25], Evaluation.Any.Rotation).Array[2, 7])
        .Select((origin, facing, scale, bones) => new TailSetting(
            origin, facing, scale,
            [.. bones.Select(bone => bone.Item3), Quaterniond.Identity],
            [.. bones.Select((bone, i) => (new Vector3d(0, 0.5 - i, -2) + (bone.Item1 * 0.4)).Direction!.Value * bone.Item2)]));

    public IReadOnlyList<string> Names => [.. Enumerable.Range(0, Bones.Length + 1).Select(i => $"tail_{i}")];

    /// <summary>A folded tail: three bones out and three back.</summary>
    public static TailSetting Folded { get; } = Of([.. Enumerable.Range(0, 6).Select(i => new Vector3d(0, 0, i < 3 ? -0.2 : 0.2))]);

    /// <summary>A tail of a metre, backwards along −Z, bowed upwards by so many radians from each bone to the next.</summary>
    public static TailSetting Bowed(int bones, double bend) => Of([.. Enumerable.Range(0, bones).Select(i =>
        Quaterniond.About(Vector3d.UnitX, bend * ((bones - 1) / 2.0 - i)).Rotate(new(0, 0, -1.0 / bones)))]);

    /// <summary>A straight tail whose bone of a number has no length; of 0, all of them.</summary>
    public static TailSetting WithoutLength(int bone) => Of([.. Enumerable.Range(1, 4).Select(i => bone == 0 || i == bone ? Vector3d.Zero : new Vector3d(0, 0, -0.25))]);

    /// <summary>This one upright at the plane x = 0 and without scale, and its mirror image over that plane on other joint frames.</summary>
    public (TailSetting Here, TailSetting There) Mirrored(Quaterniond[] frames)
    {
        var here = this with { Origin = Origin with { X = 0 }, Facing = Quaterniond.Identity, Scale = Vector3d.One };
        return (here, here with { Bones = [.. Bones.Select(Mirror)], Frames = [.. Frames.Select((_, i) => frames[i % frames.Length])] });
    }

    public static Vector3d Mirror(Vector3d v) => v with { X = -v.X };

    public static Quaterniond Mirror(Quaterniond q) => new(q.X, -q.Y, -q.Z, q.W);

    public Chain Declare(RigDraft rig)
    {
        var parent = new Trs(Origin, Facing, Scale).ToAffine();
        var above = rig.Skeleton("tail").Root("pelvis", JointRole.Helper, Origin.ToSingle(), Facing.ToSingle(), Scale.ToSingle());
        var at = Origin + Facing.Rotate(new(0, 0.9, -0.1));
        var joints = new List<Joint>();
        for (var i = 0; i < Names.Count; i++)
        {
            above = above.Child(Names[i], JointRole.Deform, parent.Inverse().Apply(at).ToSingle(), Frames[i].ToSingle());
            parent *= new Trs(parent.Inverse().Apply(at).ToSingle(), ((Quaterniond)Frames[i].ToSingle()).Normalized(), Vector3d.One).ToAffine();
            joints.Add(above);
            if (i < Bones.Length)
                at += Facing.Rotate(Bones[i]);
        }

        return rig.Chain(joints[0], joints[^1]).Bending(Facing.Rotate(Vector3d.UnitY).ToSingle());
    }

    private static TailSetting Of(Vector3d[] bones) =>
        new(Vector3d.Zero, Quaterniond.Identity, Vector3d.One, [.. Enumerable.Repeat(Quaterniond.Identity, bones.Length + 1)], bones);
}
