using System.Numerics;

namespace Condyle.Runtime.Baking;

/// <summary>A joint's channels as the delivered file has them: what a player uses where a clip has no track. Where the file says it inexactly, players need one.</summary>
internal readonly record struct JointRest(Vector3 Translation, Quaternion Rotation, Vector3 Scale, bool IsExact = true)
{
    public static IReadOnlyList<JointRest> Of(CompiledRig rig) =>
        [.. rig.Joints.Select(joint => new JointRest(joint.RestTranslation, joint.RestRotation, joint.RestScale))];

    /// <summary>How many metres of the world a unit of each joint's translation is at rest, along the axis that is scaled most.</summary>
    public static double[] Units(CompiledRig rig, IReadOnlyList<JointRest> rest)
    {
        var units = new double[rig.Joints.Count];
        foreach (var joint in rig.Joints)
        {
            var scale = joint.Parent < 0 ? Vector3.One : Vector3.Abs(rest[joint.Parent].Scale);
            units[joint.Index] = joint.Parent < 0 ? 1 : units[joint.Parent] * Math.Max(scale.X, Math.Max(scale.Y, scale.Z));
        }

        return units;
    }
}
