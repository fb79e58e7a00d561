using System.Numerics;
using Condyle.Evaluation;

namespace Condyle.Runtime.Tests.Matching;

/// <summary>Where the exported joints of an instance are, to be compared after something changed.</summary>
internal sealed class Shown
{
    private readonly Matrix4x4[] worlds;

    private Shown(RigInstance instance)
    {
        instance.Evaluate();
        worlds = [.. instance.Rig.Joints.Select(joint => instance.JointWorld(joint.Index))];
    }

    public static Shown Of(RigInstance instance) => new(instance);

    /// <summary>The largest distance in metres and angle in degrees between the joints now and then.</summary>
    public (double Metres, double Degrees) Against(Shown other, params IEnumerable<int> joints)
    {
        var (metres, degrees) = (0.0, 0.0);
        foreach (var joint in joints.DefaultIfEmpty(-1).SelectMany(joint => joint < 0 ? Enumerable.Range(0, worlds.Length) : [joint]))
        {
            metres = Math.Max(metres, Vector3.Distance(worlds[joint].Translation, other.worlds[joint].Translation));
            degrees = Math.Max(degrees, Quaterniond.Angle(Rotation(worlds[joint]), Rotation(other.worlds[joint])) * 180 / Math.PI);
        }

        return (metres, degrees);
    }

    /// <summary>How far the middle joint of a limb is from the line between its ends.</summary>
    public float Bend(CompiledLimb limb)
    {
        var (root, middle, tip) = (worlds[limb.Joints[0]].Translation, worlds[limb.Joints[1]].Translation, worlds[limb.Joints[2]].Translation);
        return Vector3.Cross(middle - root, Vector3.Normalize(tip - root)).Length();
    }

    private static Quaterniond Rotation(Matrix4x4 world) => new Affine3d(
        new Vector3d(world.M11, world.M12, world.M13), new Vector3d(world.M21, world.M22, world.M23), new Vector3d(world.M31, world.M32, world.M33), Vector3d.Zero).Rotation;
}
