using Condyle.Evaluation;
using CsCheck;

namespace Condyle.Tests.Evaluation;

/// <summary>An arm away from the tidy case: joint frames turned at random, a root that isn't at the origin, uneven scale above, a bent rest, either side.</summary>
internal sealed record ArmSetting(
    Vector3d Origin, Quaterniond Facing, Vector3d Scale, Quaterniond[] Frames, double Bend, Side Side, bool HasTwist = true)
{
    public const double UpperArm = 0.31;

    public const double Forearm = 0.26;

    public static ArmSetting Tidy { get; } =
        new(Vector3d.Zero, Quaterniond.Identity, Vector3d.One, [.. Enumerable.Repeat(Quaterniond.Identity, 6)], Math.PI / 9, Side.Left);

    public static Gen<ArmSetting> Any { get; } = Gen.Select(
        Evaluation.Any.Vector, Evaluation.Any.Rotation, Evaluation.Any.Scale, Evaluation.Any.Rotation.Array[6], Gen.Double[0.1, 1.4], Gen.Bool)
        .Select((origin, facing, scale, frames, bend, left) => new ArmSetting(origin, facing, scale, frames, bend, left ? Side.Left : Side.Right));

    /// <summary>Where the joints are in the character's own space: the elbow bends backwards, away from +Z.</summary>
    public IReadOnlyList<(string Name, Vector3d At)> Points
    {
        get
        {
            var shoulder = new Vector3d(0.2 * Side.Sign, 1.45, -0.02);
            var elbow = shoulder + (new Vector3d(Side.Sign, -0.2, 0).Direction!.Value * UpperArm);
            var forearm = new Vector3d(Math.Cos(Bend) * Side.Sign, -0.2, Math.Sin(Bend)).Direction!.Value * Forearm;
            return [("root", new(0, 0, 0.1)), ("chest", new(0, 1.3, 0)), ("shoulder", shoulder), ("elbow", elbow), ("elbow_twist", elbow + (forearm * 0.5)), ("wrist", elbow + forearm)];
        }
    }

    /// <summary>From the character's own space to the world.</summary>
    public Affine3d ToWorld => Affine3d.Rigid(Origin, Facing);

    public Dictionary<string, Joint> Declare(RigDraft rig)
    {
        var skeleton = rig.Skeleton("arm");
        var joints = new Dictionary<string, Joint>();
        var parent = Affine3d.Identity;
        Joint? above = null;
        for (var i = 0; i < Points.Count; i++)
        {
            var (name, at) = Points[i];
            if (name == "elbow_twist" && !HasTwist)
                continue;
            var local = parent.Inverse().Apply(ToWorld.Apply(at)).ToSingle();
            var turned = Frames[i].ToSingle();
            var role = name == "elbow_twist" ? JointRole.Twist : JointRole.Deform;
            var scale = (i == 0 ? Scale : Vector3d.One).ToSingle();
            above = above is { } joint ? joint.Child(name, role, local, turned) : skeleton.Root(name, role, local, turned, scale);
            joints[name] = above.Value;
            parent *= new Trs(local, Frames[i], scale).ToAffine();
        }

        return joints;
    }
}
