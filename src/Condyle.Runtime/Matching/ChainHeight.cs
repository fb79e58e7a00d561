using Condyle.Evaluation;

namespace Condyle.Runtime.Matching;

internal static class ChainHeight
{
    /// <summary>How far from straight a chain is: the distance from the line between its ends of the joint that is furthest from it.</summary>
    public static double Of(IReadOnlyList<Affine3d> joints)
    {
        var line = (joints[^1].Origin - joints[0].Origin).Direction ?? Vector3d.Zero;
        return joints.Max(joint => (joint.Origin - joints[0].Origin).Across(line).Length);
    }
}
