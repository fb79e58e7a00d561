using System.Numerics;

namespace Condyle.Runtime.Baking;

/// <summary>A joint's channels as the delivered file has them: what a player uses where a clip has no track. Where the file says it inexactly, players need one.</summary>
internal readonly record struct JointRest(Vector3 Translation, Quaternion Rotation, Vector3 Scale, bool IsExact = true)
{
    public static IReadOnlyList<JointRest> Of(CompiledRig rig) =>
        [.. rig.Joints.Select(joint => new JointRest(joint.RestTranslation, joint.RestRotation, joint.RestScale))];
}
