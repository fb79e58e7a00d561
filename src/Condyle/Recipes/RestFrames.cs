using Condyle.Evaluation;
using Condyle.Model;

namespace Condyle.Recipes;

/// <summary>Where joints stand at rest, for what a recipe says of directions and sizes.</summary>
internal static class RestFrames
{
    /// <summary>A joint's world frame at rest.</summary>
    public static Fact<Affine3d> RestOf(this RigDraft rig, Joint joint)
    {
        var world = Affine3d.Identity;
        for (int? id = joint.IdIn(rig); id is { } each;)
        {
            if (rig.Log[each] is not JointDeclared declared || !declared.Rest.TryKnown(out var rest))
                return Fact<Affine3d>.Open;
            world = Trs.Of(rest).ToAffine() * world;
            id = declared.Parent;
        }

        return world;
    }

    /// <summary>The direction from a joint to another one; none where they stand at one place.</summary>
    public static Fact<Vector3d?> Towards(this RigDraft rig, Joint from, Joint to) =>
        rig.RestOf(from).TryKnown(out var start) && rig.RestOf(to).TryKnown(out var end) ? (end.Origin - start.Origin).Direction : Fact<Vector3d?>.Open;
}
