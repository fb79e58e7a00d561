using System.Numerics;
using Condyle.Evaluation;

namespace Condyle.Runtime.Baking;

/// <summary>Collects, joint by joint, how far a rig's live joints are from where they should be.</summary>
internal sealed class Comparison(CompiledRig rig)
{
    private const double DegreesPerRadian = 180 / Math.PI;

    private readonly Peak[] metres = Start(rig);
    private readonly Peak[] degrees = Start(rig);

    /// <summary>The largest distance of any joint from the world's origin that was seen.</summary>
    public double Reach { get; private set; }

    public void Take(RigInstance live, ReadOnlySpan<Affine3d> expected, float at)
    {
        foreach (var joint in rig.Joints)
        {
            var (actual, should) = (Affine(live.JointWorld(joint.Index)), expected[joint.Index]);
            Reach = Math.Max(Reach, actual.Origin.Length);
            metres[joint.Index] = Peak.Larger(metres[joint.Index], new Peak((actual.Origin - should.Origin).Length, joint.Name, at));
            degrees[joint.Index] = Peak.Larger(degrees[joint.Index], new Peak(Quaterniond.Angle(actual.Rotation, should.Rotation) * DegreesPerRadian, joint.Name, at));
        }
    }

    public Deviation Of(int joint) => new(metres[joint], degrees[joint]);

    public Deviation Largest => Deviation.Largest(rig.Joints.Select(joint => Of(joint.Index)));

    private static Peak[] Start(CompiledRig rig) => [.. rig.Joints.Select(joint => new Peak(0, joint.Name, 0))];

    private static Affine3d Affine(Matrix4x4 world) => new(
        new Vector3d(world.M11, world.M12, world.M13),
        new Vector3d(world.M21, world.M22, world.M23),
        new Vector3d(world.M31, world.M32, world.M33),
        world.Translation);
}
