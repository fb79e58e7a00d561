using Condyle.Model;

namespace Condyle.Evaluation;

/// <summary>How a node stands in its source's frame at rest, which a drive keeps if it is asked to.</summary>
internal static class RestOffset
{
    public static Affine3d Between(RigNode source, RigNode node, bool keeps, RestPose rest) =>
        keeps ? rest.WorldOf(source).Inverse() * rest.WorldOf(node) : Affine3d.Identity;
}
